package dev.placket.demo.made;

import java.awt.BasicStroke;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** Reads what a page paints: the paths of each figure, in points from the page's lower left. */
final class PaintedPaths extends PDFGraphicsStreamEngine {
  /**
   * A stroked path.
   *
   * @param path where it runs
   * @param width its line width in points
   * @param dashes lengths of dashes and gaps in points, empty for a whole line
   * @param butt whether lines and dashes end where they are said to, without a cap
   */
  record Stroked(Path2D path, double width, float[] dashes, boolean butt) {}

  /**
   * What one figure paints.
   *
   * @param strokes its stroked paths, in order
   * @param images how many pictures it shows
   */
  record Figure(List<Stroked> strokes, List<PDImage> images) {}

  private final List<Figure> figures = new ArrayList<>();
  private final Deque<COSName> marked = new ArrayDeque<>();
  private final Path2D.Double path = new Path2D.Double();
  private int outside;
  private int forms;

  private PaintedPaths(PDPage page) {
    super(page);
  }

  /** The figures of the first page, in the order in which they are drawn. */
  static List<Figure> figures(Path pdf) throws IOException {
    return figures(pdf, 0);
  }

  /** The figures of a page, counted from 0, in the order in which they are drawn. */
  static List<Figure> figures(Path pdf, int page) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      PaintedPaths reader = new PaintedPaths(document.getPage(page));
      reader.processPage(document.getPage(page));
      if (reader.outside > 0) {
        throw new IOException(reader.outside + " pictures outside any figure");
      }
      return reader.figures;
    }
  }

  @Override
  public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
    marked.push(tag);
    if (inFigure()) {
      figures.add(new Figure(new ArrayList<>(), new ArrayList<>()));
    }
  }

  @Override
  public void endMarkedContentSequence() {
    marked.pop();
  }

  private boolean inFigure() {
    COSName tag = marked.peek();
    return tag != null && tag.getName().equals("Figure");
  }

  private Figure figure() {
    return figures.get(figures.size() - 1);
  }

  @Override
  public void drawImage(PDImage image) {
    if (inFigure()) {
      figure().images().add(image);
    } else {
      outside++;
    }
  }

  /** Drawings are forms; what a figure strokes outside of one is a mark beside the drawing. */
  @Override
  public void showForm(PDFormXObject form) throws IOException {
    forms++;
    super.showForm(form);
    forms--;
  }

  @Override
  public void strokePath() {
    if (inFigure() && forms > 0) {
      double width = transformWidth(getGraphicsState().getLineWidth());
      float[] dashes = getGraphicsState().getLineDashPattern().getDashArray();
      float[] scaled = new float[dashes.length];
      for (int i = 0; i < dashes.length; i++) {
        scaled[i] = transformWidth(dashes[i]);
      }
      boolean butt = getGraphicsState().getLineCap() == BasicStroke.CAP_BUTT;
      figure().strokes().add(new Stroked((Path2D) path.clone(), width, scaled, butt));
    }
    path.reset();
  }

  @Override
  public void moveTo(float x, float y) {
    path.moveTo(x, y);
  }

  @Override
  public void lineTo(float x, float y) {
    path.lineTo(x, y);
  }

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    path.curveTo(x1, y1, x2, y2, x3, y3);
  }

  @Override
  public Point2D getCurrentPoint() {
    return path.getCurrentPoint();
  }

  @Override
  public void closePath() {
    path.closePath();
  }

  @Override
  public void endPath() {
    path.reset();
  }

  @Override
  public void fillPath(int rule) {
    path.reset();
  }

  @Override
  public void fillAndStrokePath(int rule) {
    strokePath();
  }

  @Override
  public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {
    path.moveTo(a.getX(), a.getY());
    path.lineTo(b.getX(), b.getY());
    path.lineTo(c.getX(), c.getY());
    path.lineTo(d.getX(), d.getY());
    path.closePath();
  }

  @Override
  public void clip(int rule) {
    // What is clipped away keeps its coordinates.
  }

  @Override
  public void shadingFill(COSName name) {
    path.reset();
  }
}
