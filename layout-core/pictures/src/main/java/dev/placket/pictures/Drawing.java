package dev.placket.pictures;

import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.PlanePoint;
import dev.placket.pictures.base.FineDetail;
import dev.placket.pictures.base.Ground;
import dev.placket.pictures.base.OutlineLines;
import dev.placket.pictures.base.ViewBox;
import dev.placket.pictures.path.DrawnPath;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A picture drawn with paths, sharp at any size; its measures are in drawing units, y down. */
public sealed interface Drawing extends Picture
    permits SvgDrawing, WeightedDrawing, dev.placket.pictures.PdfDrawing {
  /** In drawing units, strokes included, clipped to the part that is shown. */
  @Override
  InkedBox inkedBox();

  /**
   * As {@link #inkedBox}, with the white that is drawn, as cloth is shown. A white sheet behind all
   * of the drawing is part of it where ink reaches the edge of the view, or where there is no ink;
   * else the sheet is the page that the cloth lies on.
   */
  InkedBox groundedBox();

  /** What lies where nothing is drawn: a sheet of colour behind all of it, or nothing. */
  Ground ground();

  /** The part of the plane that is shown. */
  ViewBox viewBox();

  /**
   * The width that the file asks to be printed at, or null if it states none or a share of the
   * page. It says nothing about the garment's size.
   */
  @Nullable Length statedWidth();

  /** The printed height that the file states, or null if it states none. */
  @Nullable Length statedHeight();

  /** The centre of every element that has an id and is drawn, in drawing units, by id. */
  Map<String, PlanePoint> points();

  /**
   * The path of an element, or of a group with one path in it, in drawing units; null where no
   * element with that id draws just one path without gaps.
   */
  @Nullable DrawnPath path(String id);

  /** Its outline, by which its lines are weighted; null where it has no lines of its own. */
  @Nullable OutlineLines lines();

  /**
   * This drawing with all strokes, and the dashes of each, multiplied: fills, lettering, markers
   * and the tiles of patterns stay. Its bounds are those of its paths.
   *
   * @param factor above 0
   * @param gap what gaps between dashes have at least, in drawing units
   * @throws IllegalStateException if it has no {@link #lines}
   */
  Drawing weighted(double factor, double gap);

  /** The finest line, lettering and stitch gap, in drawing units. */
  FineDetail fineDetail();

  /**
   * Paints in drawing units, clipped to the part that is shown, as paths: the caller's transform
   * leads from drawing units to the page.
   */
  void paint(Graphics2D g);

  /**
   * Renders a part of the drawing on a transparent background, 8-bit sRGB with alpha.
   *
   * @param pixelWidth the width of the result; its height follows from the part, rounded to the
   *     nearest and at least 1
   * @param part in drawing units, as a rule {@link #inkedBox()}
   */
  default BufferedImage render(int pixelWidth, InkedBox part) {
    double scale = pixelWidth / part.width();
    int pixelHeight = (int) Math.max(1, Math.round(scale * part.height()));
    return rendered(this, pixelWidth, pixelHeight, scale, part);
  }

  /**
   * Renders a part of the drawing into just so many pixels, in shape: as large as both sides allow,
   * from the top left on.
   *
   * @param pixelWidth at least 1
   * @param pixelHeight at least 1
   * @param part in drawing units
   */
  default BufferedImage render(int pixelWidth, int pixelHeight, InkedBox part) {
    double scale = Math.min(pixelWidth / part.width(), pixelHeight / part.height());
    return rendered(this, pixelWidth, pixelHeight, scale, part);
  }

  private static BufferedImage rendered(
      Drawing drawing, int pixelWidth, int pixelHeight, double scale, InkedBox part) {
    BufferedImage image = new BufferedImage(pixelWidth, pixelHeight, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    try {
      // What shape-rendering="geometricPrecision" asks for: lines where they are, not on the grid.
      g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
      g.setRenderingHint(RenderingHints.KEY_RENDERING, RenderingHints.VALUE_RENDER_QUALITY);
      g.setClip(0, 0, pixelWidth, pixelHeight);
      g.scale(scale, scale);
      g.translate(-part.left(), -part.top());
      drawing.paint(g);
    } finally {
      g.dispose();
    }
    return image;
  }
}
