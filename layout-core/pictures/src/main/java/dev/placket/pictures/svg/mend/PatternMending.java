package dev.placket.pictures.svg.mend;

import dev.placket.pictures.base.PictureNote;
import java.awt.Color;
import java.awt.Paint;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.Set;
import org.apache.batik.gvt.PatternPaint;
import org.jspecify.annotations.Nullable;

/** Draws patterns that are too fine to show in their mean colour. */
final class PatternMending {
  /** More tiles across one shape than any print resolves: 0.05 mm each on 200 mm. */
  private static final double ACROSS = 4_000;

  /** Pixels a side from which the mean colour is taken. */
  private static final int SIDE = 64;

  private final Set<PictureNote> notes;

  PatternMending(Set<PictureNote> notes) {
    this.notes = notes;
  }

  @Nullable Paint mended(PatternPaint pattern, Rectangle2D box) {
    Rectangle2D tile = pattern.getPatternRect();
    if (tile.isEmpty() || !Double.isFinite(tile.getMaxX() + tile.getMaxY())) {
      return null;
    }
    Rectangle2D.Double across = null;
    for (double[] p : PaintMending.corners(box, pattern.getPatternTransform())) {
      Rectangle2D.Double at = new Rectangle2D.Double(p[0], p[1], 0, 0);
      if (across == null) {
        across = at;
      } else {
        across.add(p[0], p[1]);
      }
    }
    if (across == null) {
      return null;
    }
    double tiles =
        Math.max(across.getWidth() / tile.getWidth(), across.getHeight() / tile.getHeight());
    return tiles <= ACROSS ? new SafePattern.PatternPaint(pattern) : mean(pattern);
  }

  private Color mean(PatternPaint pattern) {
    notes.add(PictureNote.plain("a pattern too fine to print is drawn in its average colour"));
    BufferedImage image = SafePattern.tile(pattern, SIDE, SIDE);
    MeanColour mean = new MeanColour();
    for (int argb : image.getRGB(0, 0, SIDE, SIDE, null, 0, SIDE)) {
      mean.add(new Color(argb, true), 1);
    }
    return mean.colour();
  }
}
