package dev.placket.packs.revision;

import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.units.PlanePoint;
import dev.placket.layout.units.Rect;
import dev.placket.packs.page.Inked;
import dev.placket.packs.page.Page;
import dev.placket.packs.text.TextRun;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** What is printed on a page already, so that a mark stays clear of it. */
final class PageInk {
  private final List<Rect> boxes = new ArrayList<>();
  private final List<Rect> cells;
  private final List<PlanePoint[]> lines = new ArrayList<>();
  private final Rect paper;

  /**
   * The ink of a page.
   *
   * @param edge what no printer reaches of the paper, on each side, in points
   */
  PageInk(Page page, List<Inked> flats, double edge) {
    double width = page.sheet().paper().width().pt();
    double height = page.sheet().paper().height().pt();
    paper = new Rect(edge, edge, width - edge, height - edge);
    page.sheet().rules().forEach(r -> boxes.add(r.ink()));
    page.cells().forEach(c -> text(c.runs()));
    page.pictures().forEach(p -> boxes.add(p.ink()));
    cells = page.sheet().labelledCells().stream().map(LabelledCell::box).toList();
    flats.forEach(this::flat);
  }

  private void flat(Inked flat) {
    boxes.add(flat.ink());
    text(flat.caption());
    flat.marks().forEach(m -> boxes.add(m.ink()));
    flat.callouts()
        .forEach(
            c -> {
              boxes.add(c.box());
              c.leaders().forEach(this::line);
            });
    flat.dimensions()
        .forEach(
            d -> {
              boxes.add(d.box());
              line(d.line());
              d.strokes().forEach(this::line);
            });
  }

  private void line(List<PlanePoint> points) {
    for (int i = 1; i < points.size(); i++) {
      lines.add(new PlanePoint[] {points.get(i - 1), points.get(i)});
    }
  }

  private void text(List<TextRun> runs) {
    runs.stream().filter(r -> !r.text().isBlank()).forEach(r -> boxes.add(box(r)));
  }

  /** The box of a piece of text: its letters, or a line of its height where they have no ink. */
  static Rect box(TextRun run) {
    Rectangle2D b = run.outline().getBounds2D();
    return new Rect(b.getMinX(), b.getMinY(), b.getMaxX(), b.getMaxY());
  }

  void add(Rect box) {
    boxes.add(box);
  }

  /** Whether nothing is printed within a distance of a box, which lies on the paper. */
  boolean isClear(Rect box, double distance) {
    Rect grown = box.grown(distance);
    Rectangle2D r =
        new Rectangle2D.Double(grown.left(), grown.top(), grown.width(), grown.height());
    return paper.contains(box)
        && boxes.stream().noneMatch(grown::overlaps)
        && lines.stream().noneMatch(l -> r.intersectsLine(l[0].x(), l[0].y(), l[1].x(), l[1].y()));
  }

  /** Whether it lies in no labelled cell, too. */
  boolean isClearOfCells(Rect box, double distance) {
    return isClear(box, distance) && cells.stream().noneMatch(box::overlaps);
  }
}
