package dev.placket.layout.image;

import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Point;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A picture drawn with paths, sharp at any size; its measures are in drawing units, y down. */
public final class Drawing implements Picture {
  private final String name;
  private final String digest;
  private final ViewBox viewBox;

  Drawing(String name, String digest, ViewBox viewBox) {
    this.name = name;
    this.digest = digest;
    this.viewBox = viewBox;
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public String format() {
    return "SVG";
  }

  @Override
  public String digest() {
    return digest;
  }

  @Override
  public List<String> notes() {
    return List.of();
  }

  /** In drawing units, strokes included, clipped to the viewBox. */
  @Override
  public InkedBox inkedBox() {
    return new InkedBox(
        viewBox.x(), viewBox.y(), viewBox.x() + viewBox.width(), viewBox.y() + viewBox.height());
  }

  /** The part of the plane that is shown. */
  public ViewBox viewBox() {
    return viewBox;
  }

  /**
   * The width that the file asks to be printed at, or null if it states none or a share of the
   * page. It says nothing about the garment's size.
   */
  public @Nullable Length statedWidth() {
    return null;
  }

  /** The height that the file asks to be printed at, or null likewise. */
  public @Nullable Length statedHeight() {
    return null;
  }

  /** The centre of every element that has an id and is drawn, in drawing units, by id. */
  public Map<String, Point> points() {
    return Map.of();
  }

  /** The width of the finest stroke in drawing units, or null if nothing is stroked. */
  public @Nullable Double finestStroke() {
    return null;
  }

  /**
   * Paints in drawing units, clipped to the viewBox, as paths: the caller's transform leads from
   * drawing units to the page. Opacity of elements and groups is folded into the opacity of their
   * strokes and fills; where parts of such a group overlap, the overlap is seen.
   */
  public void paint(Graphics2D g) {
    g.create().dispose();
  }

  /**
   * Renders a part of the drawing on a transparent ground, 8-bit sRGB with alpha.
   *
   * @param pixelWidth the width of the result; its height follows from the part, rounded to the
   *     nearest and at least 1
   * @param part in drawing units, as a rule {@link #inkedBox()}
   */
  public BufferedImage render(int pixelWidth, InkedBox part) {
    int height = (int) Math.max(1, Math.round(pixelWidth * part.height() / part.width()));
    return new BufferedImage(pixelWidth, height, BufferedImage.TYPE_INT_ARGB);
  }
}
