package dev.placket.packs.text;

import dev.placket.layout.units.Length;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;

/**
 * One piece of text where it stands on the sheet, all of it in one typeface.
 *
 * @param text the piece
 * @param left where it begins, in points from the sheet's left edge
 * @param baseline what it stands on, in points from the sheet's top edge
 * @param capitalHeight how high its capitals are
 * @param face the typeface that has all its characters
 * @param strong whether its strokes are thickened
 * @param white whether it is white, on a black ground, not black
 * @param language its language by its number in the pack; 0 for the leading one
 */
public record TextRun(
    String text,
    double left,
    double baseline,
    Length capitalHeight,
    Typeface face,
    boolean strong,
    boolean white,
    int language) {
  /** This piece in white, with thickened strokes, which a black ground closes up. */
  public TextRun reversed() {
    return new TextRun(text, left, baseline, capitalHeight, face, true, true, language);
  }

  /**
   * The outlines of its letters where they stand, in points from the sheet's top left corner, y
   * down: one shape, since that is filled sooner than many.
   */
  public Path2D outline() {
    Path2D all = new Path2D.Double();
    double em = capitalHeight.pt() / face.capitals();
    double x = left;
    for (int c : text.codePoints().toArray()) {
      AffineTransform place = AffineTransform.getTranslateInstance(x, baseline);
      place.scale(em, -em);
      all.append(face.outline(c).getPathIterator(place), false);
      x += face.advance(c) * em;
    }
    return all;
  }
}
