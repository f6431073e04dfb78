package dev.placket.workbooks.place;

import dev.placket.packs.placed.PlacedFlat;
import dev.placket.packs.placed.SwatchFrame;
import dev.placket.workbooks.read.DrawnThing;

/**
 * A flat as it goes into the workbook: a picture with a one-cell anchor.
 *
 * <p>The bytes are shared, not copied: they are only handed on.
 *
 * @param flat what was placed
 * @param content the bytes of a PNG, or of a JPEG
 * @param jpeg whether it is a JPEG
 * @param at the spot its upper left corner keeps to
 * @param width its width in EMU
 * @param height its height in EMU, in exactly the ratio of the picture's pixels to {@code width}
 */
@SuppressWarnings("ArrayRecordComponent")
public record Anchored(
    PlacedFlat flat, byte[] content, boolean jpeg, DrawnThing.Spot at, long width, long height) {
  /** How the names of pictures begin that this program may replace. */
  public static final String OWN = "Placket ";

  /** Whether a hairline is drawn round it, since its edge would not show on paper. */
  public boolean framed() {
    return SwatchFrame.isNeeded(flat);
  }

  /** The name it has on the worksheet. */
  public String name() {
    return OWN + flat.flat().id();
  }
}
