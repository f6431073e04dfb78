package dev.placket.demo.made;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
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
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDVectorFont;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/** The ruling and the text of a page as its PDF states them, in millimetres from the top left. */
final class PageRead extends PDFGraphicsStreamEngine {

  private static final double MM = 25.4 / 72;

  /** Glyphs farther apart than this share of the em begin another run. */
  private static final double APART = 0.6;

  /** Capitals whose outlines are as high as the height of capitals: flat above and below. */
  private static final String FLAT_CAPITALS = "BDEFHIKLMNPRTXYZ";

  /**
   * A ruled line.
   *
   * @param from its beginning
   * @param to its end
   * @param width its width
   */
  record Line(Point2D from, Point2D to, double width) {
    boolean upright() {
      return Math.abs(from.getX() - to.getX()) < 1e-3;
    }

    /** Where it stands across its direction. */
    double at() {
      return upright() ? from.getX() : from.getY();
    }

    double start() {
      return upright() ? Math.min(from.getY(), to.getY()) : Math.min(from.getX(), to.getX());
    }

    double end() {
      return upright() ? Math.max(from.getY(), to.getY()) : Math.max(from.getX(), to.getX());
    }

    /** Its ink. */
    Rectangle2D ink() {
      double half = width / 2;
      return upright()
          ? new Rectangle2D.Double(at() - half, start(), width, end() - start())
          : new Rectangle2D.Double(start(), at() - half, end() - start(), width);
    }
  }

  /**
   * Glyphs that follow one another on a baseline.
   *
   * @param text what they say
   * @param left where the first begins
   * @param right where the last ends
   * @param baseline what they stand on
   * @param em the size of the typeface
   * @param grey 0 black to 1 white
   * @param stroke the width of the line that thickens them, 0 for none
   * @param paragraph which marked paragraph they are of
   * @param font the typeface's name without the letters of a subset
   */
  record Words(
      String text,
      double left,
      double right,
      double baseline,
      double em,
      double grey,
      double stroke,
      int paragraph,
      String font) {}

  /**
   * A filled rectangle outside the figures.
   *
   * @param box where it lies
   * @param grey 0 black to 1 white
   */
  record Tint(Rectangle2D box, double grey) {}

  private final double height;
  private final List<Line> lines = new ArrayList<>();
  private final List<Line> marks = new ArrayList<>();
  private final List<Words> words = new ArrayList<>();
  private final List<Tint> tints = new ArrayList<>();
  private final List<Double> capitals = new ArrayList<>();
  private final Deque<String> marked = new ArrayDeque<>();
  private final Path2D.Double path = new Path2D.Double();
  private int paragraph;
  private int forms;

  private PageRead(PDPage page) {
    super(page);
    height = page.getMediaBox().getHeight();
  }

  /** A page, counted from 0. */
  static PageRead of(Path pdf, int page) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      PageRead read = new PageRead(document.getPage(page));
      read.processPage(document.getPage(page));
      return read;
    }
  }

  /** Ruled lines that are of the sheet, not of a figure. */
  List<Line> lines() {
    return lines;
  }

  /** Lines beside a figure, such as a bar to check the print by. */
  List<Line> marks() {
    return marks;
  }

  /** All text outside the drawings, in the order of the page. */
  List<Words> words() {
    return words;
  }

  List<Tint> tints() {
    return tints;
  }

  /** The heights of flat capitals by their outlines, as shares of the em. */
  List<Double> capitals() {
    return capitals;
  }

  /** The words that begin so. */
  Words find(String beginning) {
    return words.stream()
        .filter(w -> w.text().startsWith(beginning))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no '" + beginning + "' among " + words));
  }

  @Override
  public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
    marked.push(tag.getName());
    paragraph++;
  }

  @Override
  public void endMarkedContentSequence() {
    marked.pop();
  }

  private boolean inFigure() {
    return marked.contains("Figure");
  }

  @Override
  public void showForm(PDFormXObject form) throws IOException {
    forms++;
    super.showForm(form);
    forms--;
  }

  @Override
  public void strokePath() {
    if (forms == 0 && path.getCurrentPoint() != null) {
      Rectangle2D box = path.getBounds2D();
      Point2D from = fromTop(box.getMinX(), box.getMaxY());
      Point2D to = fromTop(box.getMaxX(), box.getMinY());
      double width = transformWidth(getGraphicsState().getLineWidth()) * MM;
      (inFigure() ? marks : lines).add(new Line(from, to, width));
    }
    path.reset();
  }

  private Point2D fromTop(double x, double y) {
    return new Point2D.Double(x * MM, (height - y) * MM);
  }

  @Override
  public void fillPath(int rule) throws IOException {
    if (forms == 0 && path.getCurrentPoint() != null) {
      Rectangle2D box = path.getBounds2D();
      if (inFigure()) {
        // The dots of leaders, or the white round them.
        path.reset();
        return;
      }
      Point2D from = fromTop(box.getMinX(), box.getMaxY());
      tints.add(
          new Tint(
              new Rectangle2D.Double(
                  from.getX(), from.getY(), box.getWidth() * MM, box.getHeight() * MM),
              grey()));
    }
    path.reset();
  }

  private double grey() throws IOException {
    int rgb = getGraphicsState().getNonStrokingColor().toRGB();
    return ((rgb >> 16 & 255) + (rgb >> 8 & 255) + (rgb & 255)) / 765.0;
  }

  @Override
  protected void showGlyph(Matrix at, PDFont font, int code, Vector moved) throws IOException {
    if (forms > 0) {
      return;
    }
    String text = font.toUnicode(code);
    double em = at.getScalingFactorY() * MM;
    Point2D origin = fromTop(at.getTranslateX(), at.getTranslateY());
    double right = origin.getX() + moved.getX() * em;
    if (text.length() == 1 && FLAT_CAPITALS.contains(text)) {
      Rectangle2D outline = ((PDVectorFont) font).getNormalizedPath(code).getBounds2D();
      capitals.add(outline.getMaxY() / 1000);
    }
    RenderingMode mode = getGraphicsState().getTextState().getRenderingMode();
    double stroke = mode.isStroke() ? getGraphicsState().getLineWidth() * MM : 0;
    String name = font.getName().replaceAll("^[A-Z]{6}\\+", "");
    Words last = words.isEmpty() ? null : words.get(words.size() - 1);
    boolean on =
        last != null
            && last.paragraph() == paragraph
            && Math.abs(last.baseline() - origin.getY()) < 1e-3
            && Math.abs(origin.getX() - last.right()) < APART * em;
    if (on) {
      words.remove(words.size() - 1);
    }
    words.add(
        new Words(
            on ? last.text() + text : text,
            on ? last.left() : origin.getX(),
            right,
            origin.getY(),
            em,
            grey(),
            stroke,
            paragraph,
            name));
  }

  @Override
  public void drawImage(PDImage image) {
    // Pictures have a reader of their own.
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
    // Nothing of a sheet is clipped.
  }

  @Override
  public void shadingFill(COSName name) {
    path.reset();
  }
}
