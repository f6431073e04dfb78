package dev.placket.pictures;

import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.PlanePoint;
import dev.placket.pictures.base.FineDetail;
import dev.placket.pictures.base.Ground;
import dev.placket.pictures.base.OutlineLines;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.base.ViewBox;
import dev.placket.pictures.path.DrawnPath;
import java.awt.Graphics2D;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A drawing with all its lines widened or narrowed alike; its bounds are those of its paths. */
final class WeightedDrawing implements Drawing {
  private final SvgDrawing drawing;
  private final OutlineLines lines;
  private final double factor;
  private final double gap;

  /**
   * A view of a drawing.
   *
   * @param factor by which all strokes are multiplied, and their dashes
   * @param gap what gaps between dashes have at least, in drawing units
   */
  WeightedDrawing(SvgDrawing drawing, OutlineLines lines, double factor, double gap) {
    this.drawing = drawing;
    this.lines = lines;
    this.factor = factor;
    this.gap = gap;
  }

  @Override
  public void paint(Graphics2D g) {
    drawing.paint(g, factor, gap, lines);
  }

  @Override
  public InkedBox inkedBox() {
    return lines.geometry();
  }

  @Override
  public InkedBox groundedBox() {
    return drawing.groundedBox();
  }

  @Override
  public FineDetail fineDetail() {
    FineDetail own = drawing.fineDetail();
    Double line = own.line();
    Double open = own.gap();
    return new FineDetail(
        line == null ? null : factor * line,
        own.lettering(),
        open == null ? null : Math.max(gap, factor * open));
  }

  @Override
  public @Nullable OutlineLines lines() {
    return new OutlineLines(factor * lines.width(), factor * lines.reach(), lines.geometry());
  }

  @Override
  public Drawing weighted(double by, double least) {
    return new WeightedDrawing(drawing, lines, factor * by, Math.max(gap, least));
  }

  @Override
  public Ground ground() {
    return drawing.ground();
  }

  @Override
  public ViewBox viewBox() {
    return drawing.viewBox();
  }

  @Override
  public @Nullable Length statedWidth() {
    return drawing.statedWidth();
  }

  @Override
  public @Nullable Length statedHeight() {
    return drawing.statedHeight();
  }

  @Override
  public Map<String, PlanePoint> points() {
    return drawing.points();
  }

  @Override
  public @Nullable DrawnPath path(String id) {
    return drawing.path(id);
  }

  @Override
  public String name() {
    return drawing.name();
  }

  @Override
  public String format() {
    return drawing.format();
  }

  @Override
  public String digest() {
    return drawing.digest();
  }

  @Override
  public List<PictureNote> notes() {
    return drawing.notes();
  }
}
