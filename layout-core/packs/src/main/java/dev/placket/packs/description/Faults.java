package dev.placket.packs.description;

import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.Place;
import dev.placket.pictures.fault.Remedy;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** All the slips of one description, so that they can be answered together. */
public final class Faults {
  /** More than these are not told. */
  private static final int MOST = 50;

  private final String file;
  private final List<Slip> slips = new ArrayList<>();

  private record Slip(TextPosition place, Fault fault) {}

  /** No slip so far in the file of that name. */
  public Faults(String file) {
    this.file = file;
  }

  /** Adds a slip. */
  public void add(TextPosition place, String found, String expected) {
    add(place, found, expected, Remedy.NONE);
  }

  /** Adds a slip with ways out that the expected value does not say. */
  public void add(TextPosition place, String found, String expected, Remedy remedy) {
    add(place, Fault.content(file, found).expecting(expected, null).with(remedy));
  }

  /** Adds a word that is none of those known. */
  public void unknown(TextPosition place, String what, String word, Collection<String> known) {
    String list = known.isEmpty() ? "none" : "one of " + String.join(", ", known);
    Fault fault = Fault.content(file, what + " '" + word + "'");
    add(place, fault.expecting(list, NearestWord.of(word, known)));
  }

  private void add(TextPosition place, Fault fault) {
    Place where = new Place.Line(place.line(), place.column());
    slips.add(new Slip(place, fault.at(where)));
  }

  /** Adds what is wrong with another file that is named at a place. */
  public void addOf(TextPosition place, Fault other) {
    slips.add(new Slip(place, other));
  }

  /** Whether there is any. */
  public boolean any() {
    return !slips.isEmpty();
  }

  /** The slips in the order of their places. */
  public List<Fault> all() {
    return slips.stream()
        .distinct()
        .sorted(
            Comparator.<Slip>comparingInt(s -> s.place().line())
                .thenComparingInt(s -> s.place().column()))
        .map(Slip::fault)
        .toList();
  }

  /**
   * Ends the run if there is any.
   *
   * @throws Refusal with the slips
   */
  public void refuse() throws Refusal {
    if (!any()) {
      return;
    }
    List<Fault> all = all();
    List<Fault> told = new ArrayList<>(all.subList(0, Math.min(MOST, all.size())));
    if (all.size() > MOST) {
      told.add(
          Fault.content(file, "and " + (all.size() - MOST) + " more")
              .remedy("correct these first"));
    }
    throw Refusal.input(told);
  }
}
