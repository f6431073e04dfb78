package dev.placket.demo.sheet;

import dev.placket.layout.flat.Surround;
import dev.placket.layout.units.Box;
import dev.placket.layout.units.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * The caption that travels with a flat: its name, and below it a note on its scale.
 *
 * @param name the name, in lines
 * @param room the widest that the note can become
 * @param width what name and note need across, in points
 */
public record FlatCaption(List<String> name, String room, double width) {
  /** From the ink to the capitals of the name. */
  static final Length AIR = Length.mm(2);

  /** From the last baseline to the end of the strip: room for descenders. */
  private static final Length DESCENT = Length.mm(0.8);

  /** From the name's last baseline to the note's. */
  private static final Length NOTE_STEP = Length.mm(3.4);

  /** Copies the lines. */
  public FlatCaption {
    name = List.copyOf(name);
  }

  /**
   * A caption whose name wraps where it is longer than the room.
   *
   * @param widestNote a note as wide as any that the fit may bring
   * @param room for the name, in points
   */
  public static FlatCaption of(String name, String widestNote, Length room, Lettering lettering) {
    List<String> lines = lettering.wrap(name, Lettering.VALUE, room.pt());
    double width = lettering.width(widestNote, Lettering.CAPTION);
    for (String line : lines) {
      width = Math.max(width, lettering.width(line, Lettering.VALUE));
    }
    return new FlatCaption(lines, widestNote, width);
  }

  /** The room it keeps below the ink. */
  public Surround surround(Lettering lettering) {
    double height =
        AIR.pt()
            + Lettering.VALUE.pt()
            + (name.size() - 1) * lettering.leading(Lettering.VALUE).pt()
            + NOTE_STEP.pt()
            + DESCENT.pt();
    return Surround.caption(Length.pt(height), Length.pt(width));
  }

  /** Its lines, in the middle under the ink. */
  public List<TextRun> under(Box ink, String note, Lettering lettering) {
    double middle = (ink.left() + ink.right()) / 2;
    double base = ink.bottom() + AIR.pt() + Lettering.VALUE.pt();
    List<TextRun> runs = new ArrayList<>();
    for (int i = 0; i < name.size(); i++) {
      double at = base + i * lettering.leading(Lettering.VALUE).pt();
      runs.add(centred(name.get(i), middle, at, Lettering.VALUE, lettering));
      if (i == name.size() - 1) {
        runs.add(centred(note, middle, at + NOTE_STEP.pt(), Lettering.CAPTION, lettering));
      }
    }
    return runs;
  }

  private static TextRun centred(
      String text, double middle, double base, Length height, Lettering lettering) {
    return new TextRun(text, middle - lettering.width(text, height) / 2, base, height);
  }
}
