package dev.placket.packs.flats;

import dev.placket.layout.flat.Surround;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.base.OutlineLines;
import dev.placket.pictures.base.PrintLimits;

/**
 * The printed width of a drawing's outline, whatever its scale; all its lines keep their ratios.
 *
 * <p>The size of such a flat is that of its paths. What strokes reach beyond them does not scale
 * and belongs to the flat's surround.
 *
 * @param printed the width of the outline on paper
 * @param lines the lines of the drawing as they are in its file
 */
public record LineWeight(Length printed, OutlineLines lines) {
  /** How far strokes reach beyond the paths on paper, at most. */
  public Length overhang() {
    return printed.times(lines.reach() / lines.width());
  }

  /** What stands round the paths. */
  public Surround around(Surround own) {
    Length over = overhang();
    return new Surround(
        own.left().plus(over),
        own.top().plus(over),
        own.right().plus(over),
        own.bottom().plus(over),
        own.leastWidth());
  }

  /** A box on the sheet with the overhang on all sides. */
  public Rect around(Rect paths) {
    return paths.grown(overhang().pt());
  }

  /**
   * The drawing as it is drawn at a scale.
   *
   * @param scale points to the drawing unit
   */
  public Drawing of(Drawing drawing, double scale) {
    double factor = printed.pt() / (lines.width() * scale);
    return drawing.weighted(factor, PrintLimits.DEFAULT.gap().pt() / scale);
  }
}
