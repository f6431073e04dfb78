package dev.placket.pictures.css;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Declarations whose values their properties take; the others drop out one by one. */
final class Declarations {
  /** Keywords that every property takes (Cascade 5, clause 7.3). */
  static final Set<String> EVERYWHERE =
      Set.of("inherit", "initial", "unset", "revert", "revert-layer");

  private static final List<String> MARKERS = List.of("marker-start", "marker-mid", "marker-end");
  private static final List<String> FONT =
      List.of(
          "font-style", "font-variant", "font-weight", "font-stretch", "font-size", "font-family");

  /** Properties of a reader's doing or of motion, which say nothing of a print. */
  private static final Set<String> UNSEEN = Set.of("cursor", "pointer-events", "user-select");

  private static final Pattern OF_THE_WINDOW =
      Pattern.compile("[0-9.](?:vw|vh|vmin|vmax|rem)\\b", Pattern.CASE_INSENSITIVE);

  private final PropertyValues values;
  private final Notes notes;

  Declarations(PropertyValues values, Notes notes) {
    this.values = values;
    this.notes = notes;
  }

  List<Declaration> ofAttribute(String style) {
    Block block = Block.of(Scan.withoutComments(style), notes);
    if (!block.nested().isEmpty()) {
      notes.add("style rules inside a style attribute are left out");
    }
    return accepted(block.declarations());
  }

  /** Those that hold wherever they apply; a value with variables is judged once they are known. */
  List<Declaration> accepted(List<Declaration> stated) {
    List<Declaration> accepted = new ArrayList<>();
    for (Declaration d : stated) {
      if (d.isCustom()) {
        accepted.add(d);
      } else if (!UNSEEN.contains(d.name())) {
        accept(d, accepted);
      }
    }
    return accepted;
  }

  private void accept(Declaration d, List<Declaration> accepted) {
    boolean everywhere = EVERYWHERE.contains(d.value().toLowerCase(Locale.ROOT));
    if (d.name().equals("marker") || (everywhere && d.name().equals("font"))) {
      for (String part : d.name().equals("marker") ? MARKERS : FONT) {
        accept(new Declaration(part, d.value(), d.important()), accepted);
      }
      return;
    }
    if (everywhere) {
      String keyword = d.value().toLowerCase(Locale.ROOT);
      accepted.add(new Declaration(d.name(), keyword, d.important()));
    } else if (Variables.uses(d.value())) {
      accepted.add(d);
    } else {
      String value = canonical(d.name(), d.value());
      if (value == null) {
        left(d.name(), d.value());
      } else {
        accepted.add(new Declaration(d.name(), value, d.important()));
      }
    }
  }

  /** The value in its plain form, or null; notes a colour for print that is passed over. */
  @Nullable String canonical(String name, String stated) {
    String value = values.canonical(name, stated);
    if (value != null && PropertyValues.printsOtherwise(name, stated)) {
      notes.add("a printing colour is drawn in the screen colour beside it; check the colour");
    }
    if (value != null && OF_THE_WINDOW.matcher(stated).find()) {
      notes.add("lengths in vw, vh or rem are shares of the drawing or of 16 px; use px");
    }
    return value;
  }

  /** Notes that a value is left out. */
  void left(String name, String value) {
    if (UNSEEN.contains(name)) {
      return;
    }
    if (name.equals("filter")) {
      notes.add("filter effects are left out; flatten them before export");
      return;
    }
    notes.add(
        "the style " + Notes.quoted(name + ": " + value) + " is not understood and is left out");
  }
}
