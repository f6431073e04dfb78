package dev.placket.packs.description;

import dev.placket.packs.refusal.Refusal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** All the slips of one description, so that they can be answered together. */
public final class Faults {
  /** More than these are not told. */
  private static final int MOST = 50;

  private final String file;
  private final List<Fault> faults = new ArrayList<>();

  /** No slip so far in the file of that name. */
  public Faults(String file) {
    this.file = file;
  }

  /** Adds a slip. */
  public void add(TextPosition place, String found, String expected) {
    faults.add(new Fault(place, found, expected, null));
  }

  /** Adds a word that is none of those known. */
  public void unknown(TextPosition place, String what, String word, Collection<String> known) {
    String list = known.isEmpty() ? "none" : "one of " + String.join(", ", known);
    String said = what + " '" + word + "'";
    faults.add(new Fault(place, said, list, NearestWord.of(word, known)));
  }

  /** Whether there is any. */
  public boolean any() {
    return !faults.isEmpty();
  }

  /** The slips in the order of their places. */
  public List<Fault> all() {
    return faults.stream()
        .distinct()
        .sorted(
            Comparator.<Fault>comparingInt(f -> f.place().line())
                .thenComparingInt(f -> f.place().column()))
        .toList();
  }

  /**
   * Ends the run if there is any.
   *
   * @throws Refusal with one message for each
   */
  public void refuse() throws Refusal {
    if (!any()) {
      return;
    }
    List<Fault> all = all();
    List<String> messages = new ArrayList<>();
    all.stream().limit(MOST).forEach(f -> messages.add(f.message(file)));
    if (all.size() > MOST) {
      messages.add(file + ": and " + (all.size() - MOST) + " more; correct these first.");
    }
    throw Refusal.input(messages);
  }
}
