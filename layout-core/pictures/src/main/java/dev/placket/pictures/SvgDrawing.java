package dev.placket.pictures;

import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.PlanePoint;
import dev.placket.pictures.base.FineDetail;
import dev.placket.pictures.base.Ground;
import dev.placket.pictures.base.Layers;
import dev.placket.pictures.base.OutlineLines;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.base.ViewBox;
import dev.placket.pictures.path.DrawnPath;
import dev.placket.pictures.svg.layer.LayerPlan;
import dev.placket.pictures.svg.layer.NodePainter;
import dev.placket.pictures.svg.layer.PixelLayers;
import dev.placket.pictures.svg.measure.GeometryBox;
import dev.placket.pictures.svg.measure.OnePath;
import dev.placket.pictures.svg.measure.StrokeClasses;
import dev.placket.pictures.svg.measure.StrokeWeights;
import dev.placket.pictures.svg.parse.SvgSize;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
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

/** A drawing read from SVG. */
final class SvgDrawing implements Drawing {
  private final String name;
  private final String format;
  private final String digest;
  private final Ground ground;
  private final SvgSize size;
  private final InkedBox ink;
  private final InkedBox grounded;
  private final Map<String, PlanePoint> points;
  private final Map<String, GraphicsNode> named;
  private final FineDetail fine;
  private final List<PictureNote> notes;
  private final GraphicsNode node;
  private final LayerPlan plan;

  SvgDrawing(
      String name,
      String format,
      String digest,
      Ground ground,
      SvgSize size,
      InkedBox ink,
      InkedBox grounded,
      Map<String, PlanePoint> points,
      Map<String, GraphicsNode> named,
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
    this.grounded = grounded;
    this.points = Collections.unmodifiableMap(new TreeMap<>(points));
    this.named = Map.copyOf(named);
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

  @Override
  public InkedBox inkedBox() {
    return ink;
  }

  @Override
  public InkedBox groundedBox() {
    return grounded;
  }

  @Override
  public Ground ground() {
    return ground;
  }

  @Override
  public ViewBox viewBox() {
    return size.viewBox();
  }

  @Override
  public @Nullable Length statedWidth() {
    return size.width();
  }

  @Override
  public @Nullable Length statedHeight() {
    return size.height();
  }

  @Override
  public Map<String, PlanePoint> points() {
    return points;
  }

  @Override
  public @Nullable DrawnPath path(String id) {
    GraphicsNode its = named.get(id);
    synchronized (node) {
      return its == null ? null : OnePath.of(its, toUnits());
    }
  }

  @Override
  public @Nullable OutlineLines lines() {
    ViewBox v = viewBox();
    Rectangle2D shown = new Rectangle2D.Double(v.x(), v.y(), v.width(), v.height());
    synchronized (node) {
      return StrokeClasses.of(node, toUnits(), shown);
    }
  }

  private AffineTransform toUnits() {
    ViewBox v = viewBox();
    return AffineTransform.getTranslateInstance(v.x(), v.y());
  }

  @Override
  public Drawing weighted(double factor, double gap) {
    OutlineLines lines = lines();
    if (lines == null) {
      throw new IllegalStateException(name + ": no lines");
    }
    return new WeightedDrawing(this, lines, factor, gap);
  }

  @Override
  public FineDetail fineDetail() {
    return fine;
  }

  /**
   * {@inheritDoc} Opacity of elements and groups is folded into the opacity of their strokes and
   * fills; where parts of such a group overlap, and where they blend or are masked, they are
   * painted as a layer, by the {@link Layers} that the graphics has under {@link Layers#KEY}, else
   * as pixels.
   */
  @Override
  public void paint(Graphics2D g) {
    ViewBox v = viewBox();
    paint(g, new Rectangle2D.Double(v.x(), v.y(), v.width(), v.height()));
  }

  /**
   * Paints with strokes multiplied. Where nothing is drawn beyond the view, wider strokes may reach
   * there.
   */
  void paint(Graphics2D g, double factor, double gap, OutlineLines lines) {
    ViewBox v = viewBox();
    Rectangle2D view = new Rectangle2D.Double(v.x(), v.y(), v.width(), v.height());
    synchronized (node) {
      Rectangle2D drawn = GeometryBox.of(node, toUnits());
      if (drawn != null && view.contains(drawn)) {
        double more = factor * lines.reach();
        view.setRect(v.x() - more, v.y() - more, v.width() + 2 * more, v.height() + 2 * more);
      }
      try (StrokeWeights weights = StrokeWeights.set(node, toUnits(), factor, gap)) {
        paint(g, view);
      }
    }
  }

  private void paint(Graphics2D g, Rectangle2D view) {
    ViewBox v = viewBox();
    Graphics2D own = (Graphics2D) g.create();
    try {
      // Clips stay paths: without this hint a curved clip becomes a layer of pixels.
      own.setRenderingHint(
          RenderingHintsKeyExt.KEY_TRANSCODING, RenderingHintsKeyExt.VALUE_TRANSCODING_VECTOR);
      // Batik prints a warning where it finds no reference to the image, be it an empty one.
      own.setRenderingHint(
          RenderingHintsKeyExt.KEY_BUFFERED_IMAGE, new WeakReference<BufferedImage>(null));
      own.clip(view);
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
}
