package dev.placket.packs.flats;

import dev.placket.layout.flat.Surround;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import dev.placket.packs.text.Lettering;
import dev.placket.packs.text.TextRun;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The caption that travels with a flat: its name, below it notes, the last of them on its scale.
 *
 * @param name the name, in lines; none where the flat goes without a caption
 * @param notes further lines under it
 * @param scale the line on its scale that follows; null for none
 * @param width what all of it needs across, in points
 * @param written its text before it was wrapped
 */
public record FlatCaption(
    List<String> name,
    List<String> notes,
    @Nullable ScaleLine scale,
    double width,
    Written written) {
  /** No caption. */
  public static final FlatCaption NONE =
      new FlatCaption(List.of(), List.of(), null, 0, new Written("", "", Length.ZERO));

  /**
   * A caption before it was wrapped.
   *
   * @param name its first lines
   * @param note the lines after them; blank for none
   * @param room for a line
   */
  public record Written(String name, String note, Length room) {}

  /** From the ink to the capitals of the name. */
  static final Length AIR = Length.mm(2);

  /** From the last baseline to the end of the strip: room for descenders. */
  private static final Length DESCENT = Length.mm(0.8);

  /** From the name's last baseline to the note's. */
  private static final Length NOTE_STEP = Length.mm(3.4);

  /** Copies the lines. */
  public FlatCaption {
    name = List.copyOf(name);
    notes = List.copyOf(notes);
  }

  /** Name and notes, without the line on its scale, with marks of languages. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>(name);
    lines.addAll(notes);
    return lines;
  }

  /**
   * A caption whose name wraps where it is longer than the room.
   *
   * @param note a note of its own between name and scale; blank for none
   * @param scale the line on its scale; null for none
   * @param room for a line, in points
   */
  public static FlatCaption of(
      String name, String note, @Nullable ScaleLine scale, Length room, Lettering lettering) {
    List<String> lines = lettering.wrapHard(name, Lettering.VALUE, room.pt());
    Length height = noteHeight(note);
    List<String> notes = note.isBlank() ? List.of() : lettering.wrapHard(note, height, room.pt());
    ScaleLine line = scale;
    double width = 0;
    if (line != null) {
      width = width(line, lettering);
      if (width > room.pt()) {
        line = line.shortened();
        width = width(line, lettering);
      }
    }
    for (String part : lines) {
      width = Math.max(width, lettering.width(part, Lettering.VALUE));
    }
    for (String part : notes) {
      width = Math.max(width, lettering.width(part, height));
    }
    return new FlatCaption(lines, notes, line, width, new Written(name, note, room));
  }

  private static double width(ScaleLine line, Lettering lettering) {
    String widest = line.widest();
    return lettering.width(widest, noteHeight(widest));
  }

  /** The same under a drawing that prints wider than the room: its lines are as long as that. */
  public FlatCaption across(double drawing, Lettering lettering) {
    return drawing <= written.room.pt() || name.isEmpty()
        ? this
        : of(written.name, written.note, scale, Length.pt(drawing), lettering);
  }

  /** The room it keeps below the ink. */
  public Surround surround(Lettering lettering) {
    if (name.isEmpty()) {
      return Surround.NONE;
    }
    int below = notes.size() + (scale == null ? 0 : 1);
    double height =
        AIR.pt()
            + Lettering.VALUE.pt()
            + (name.size() - 1) * lettering.leading(Lettering.VALUE).pt()
            + below * NOTE_STEP.pt()
            + DESCENT.pt();
    return Surround.caption(Length.pt(height), Length.pt(width));
  }

  /**
   * Its lines, in the middle under the ink.
   *
   * @param garmentScale printed length over real length; null where no real length is stated
   */
  public List<TextRun> under(Rect ink, @Nullable Double garmentScale, Lettering lettering) {
    double middle = (ink.left() + ink.right()) / 2;
    double base = ink.bottom() + AIR.pt() + Lettering.VALUE.pt();
    List<TextRun> runs = new ArrayList<>();
    for (String line : name) {
      runs.addAll(centred(line, middle, base, Lettering.VALUE, lettering));
      base += lettering.leading(Lettering.VALUE).pt();
    }
    base += NOTE_STEP.pt() - lettering.leading(Lettering.VALUE).pt();
    for (String line : notes) {
      runs.addAll(centred(line, middle, base, noteHeight(line), lettering));
      base += NOTE_STEP.pt();
    }
    if (scale != null) {
      String line = scale.text(garmentScale);
      runs.addAll(centred(line, middle, base, noteHeight(line), lettering));
    }
    return runs;
  }

  private static Length noteHeight(String note) {
    return Lettering.steps(note, Lettering.CAPTION, Lettering.CAPTION).get(0);
  }

  private static List<TextRun> centred(
      String text, double middle, double base, Length height, Lettering lettering) {
    double left = middle - lettering.width(text, height) / 2;
    return lettering.line(text, left, base, height, false);
  }
}
