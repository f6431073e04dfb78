package dev.placket.pictures.css;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What was left out of the styles of a drawing, each said once, in the order it was met. */
final class Notes {
  private static final int MOST = 12;
  private static final int LONGEST = 60;

  private final Set<StyleNote> notes = new LinkedHashSet<>();

  /** Adds that something is left out. */
  void add(String note) {
    notes.add(new StyleNote(note, true));
  }

  /** Adds what every reader of styles does as well. */
  void addPlain(String note) {
    notes.add(new StyleNote(note, false));
  }

  /** Text of the file, fit to stand in a note. */
  static String quoted(String text) {
    String line = text.strip().replaceAll("[\\s\\p{Cntrl}]+", " ");
    return "'" + (line.length() <= LONGEST ? line : line.substring(0, LONGEST).strip() + "…") + "'";
  }

  /** The first dozen, and how many more there are. */
  List<StyleNote> all() {
    if (notes.size() <= MOST) {
      return List.copyOf(notes);
    }
    List<StyleNote> first = new ArrayList<>(notes.stream().limit(MOST).toList());
    String more = (notes.size() - MOST) + " more parts of its style sheets are left out";
    first.add(new StyleNote(more, notes.stream().anyMatch(StyleNote::changesDrawing)));
    return first;
  }
}
