package dev.placket.pictures;

import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Point;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.lang.ref.WeakReference;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.batik.ext.awt.RenderingHintsKeyExt;
import org.apache.batik.gvt.GraphicsNode;
import org.jspecify.annotations.Nullable;

/** A picture drawn with paths, sharp at any size; its measures are in drawing units, y down. */
public final class Drawing implements Picture {
  private final String name;
  private final String format;
  private final String digest;
  private final Ground ground;
  private final SvgSize size;
  private final InkedBox ink;
  private final Map<String, Point> points;
  private final FineDetail fine;
  private final List<PictureNote> notes;
  private final GraphicsNode node;
  private final LayerPlan plan;

  Drawing(
      String name,
      String format,
      String digest,
      Ground ground,
      SvgSize size,
      InkedBox ink,
      Map<String, Point> points,
      FineDetail fine,
      List<PictureNote> notes,
      GraphicsNode node,
      LayerPlan plan) {
    this.name = name;
    this.format = format;
    this.digest = digest;
    this.ground = ground;
    this.size = size;
    this.ink = ink;
    this.points = Collections.unmodifiableMap(new TreeMap<>(points));
    this.fine = fine;
    this.notes = List.copyOf(notes);
    this.node = node;
    this.plan = plan;
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public String format() {
    return format;
  }

  @Override
  public String digest() {
    return digest;
  }

  @Override
  public List<PictureNote> notes() {
    return notes;
  }

  /** In drawing units, strokes included, clipped to the viewBox. */
  @Override
  public InkedBox inkedBox() {
    return ink;
  }

  /** What lies where nothing is drawn: a sheet of colour behind all of it, or nothing. */
  public Ground ground() {
    return ground;
  }

  /** The part of the plane that is shown. */
  public ViewBox viewBox() {
    return size.viewBox();
  }

  /**
   * The width that the file asks to be printed at, or null if it states none or a share of the
   * page. It says nothing about the garment's size.
   */
  public @Nullable Length statedWidth() {
    return size.width();
  }

  /** The printed height that the file states, or null if it states none. */
  public @Nullable Length statedHeight() {
    return size.height();
  }

  /** The centre of every element that has an id and is drawn, in drawing units, by id. */
  public Map<String, Point> points() {
    return points;
  }

  /** The finest line, lettering and stitch gap, in drawing units. */
  public FineDetail fineDetail() {
    return fine;
  }

  /**
   * Paints in drawing units, clipped to the viewBox, as paths: the caller's transform leads from
   * drawing units to the page. Opacity of elements and groups is folded into the opacity of their
   * strokes and fills; where parts of such a group overlap, and where they blend or are masked,
   * they are painted as a layer, by the {@link Layers} that the graphics has under {@link
   * Layers#KEY}, else as pixels.
   */
  public void paint(Graphics2D g) {
    ViewBox v = viewBox();
    Graphics2D own = (Graphics2D) g.create();
    try {
      // Clips stay paths: without this hint a curved clip becomes a layer of pixels.
      own.setRenderingHint(
          RenderingHintsKeyExt.KEY_TRANSCODING, RenderingHintsKeyExt.VALUE_TRANSCODING_VECTOR);
      // Batik prints a warning where it finds no reference to the image, be it an empty one.
      own.setRenderingHint(
          RenderingHintsKeyExt.KEY_BUFFERED_IMAGE, new WeakReference<BufferedImage>(null));
      own.clip(new Rectangle2D.Double(v.x(), v.y(), v.width(), v.height()));
      own.translate(v.x(), v.y());
      // Batik keeps caches in its nodes, so one thread at a time.
      synchronized (node) {
        Object given = own.getRenderingHint(Layers.KEY);
        new NodePainter(plan, given instanceof Layers l ? l : new PixelLayers()).paint(node, own);
      }
    } finally {
      own.dispose();
    }
  }

  /**
   * Renders a part of the drawing on a transparent ground, 8-bit sRGB with alpha.
   *
   * @param pixelWidth the width of the result; its height follows from the part, rounded to the
   *     nearest and at least 1
   * @param part in drawing units, as a rule {@link #inkedBox()}
   */
  public BufferedImage render(int pixelWidth, InkedBox part) {
    double scale = pixelWidth / part.width();
    return drawn(pixelWidth, (int) Math.max(1, Math.round(scale * part.height())), scale, part);
  }

  /**
   * Renders a part of the drawing into just so many pixels, in shape: as large as both sides allow,
   * from the top left on.
   *
   * @param pixelWidth at least 1
   * @param pixelHeight at least 1
   * @param part in drawing units
   */
  public BufferedImage render(int pixelWidth, int pixelHeight, InkedBox part) {
    double scale = Math.min(pixelWidth / part.width(), pixelHeight / part.height());
    return drawn(pixelWidth, pixelHeight, scale, part);
  }

  private BufferedImage drawn(int pixelWidth, int pixelHeight, double scale, InkedBox part) {
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
      paint(g);
    } finally {
      g.dispose();
    }
    return image;
  }
}
