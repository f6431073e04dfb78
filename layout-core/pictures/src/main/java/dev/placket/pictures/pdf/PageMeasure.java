package dev.placket.pictures.pdf;

import dev.placket.pictures.base.FineDetail;
import dev.placket.pictures.base.PlacedImage;
import dev.placket.pictures.shape.InkBoxes;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Paint;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.contentstream.operator.MissingOperandException;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDVectorFont;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDPattern;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.graphics.state.PDGraphicsState;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;
import org.jspecify.annotations.Nullable;

/**
 * Walks all that a page draws and measures it: where its ink lies, its finest line, lettering and
 * stitch gap, its pictures of pixels. Each operator is a step, so a page that draws without end
 * stops.
 */
final class PageMeasure extends PDFGraphicsStreamEngine {
  /** Capitals are about this much of the font size in the usual faces (from memory). */
  private static final double CAPITAL = 0.7;

  /** Deeper forms would be skipped without a word. */
  private static final int DEEPEST = 48;

  private final AffineTransform toUnits;
  private final Rectangle2D shown;
  private final StepCount steps;
  private final EmbeddedFonts fonts = new EmbeddedFonts(this);
  private final InkBoxes ink;
  private final List<PlacedImage> images = new ArrayList<>();
  private final GeneralPath path = new GeneralPath();
  private final ArchiveFaults archive = new ArchiveFaults();
  private int clipRule = -1;
  private double line = Double.POSITIVE_INFINITY;
  private double lettering = Double.POSITIVE_INFINITY;
  private double gap = Double.POSITIVE_INFINITY;

  /**
   * Measures a page.
   *
   * @param toUnits from the space of the page to drawing units
   * @param shown the part that is shown, in drawing units
   */
  PageMeasure(PDPage page, AffineTransform toUnits, Rectangle2D shown, StepCount steps) {
    super(page);
    this.toUnits = toUnits;
    this.shown = shown;
    this.steps = steps;
    this.ink = new InkBoxes(shown);
  }

  void run() throws IOException {
    archive.resources(getPage());
    processPage(getPage());
  }

  /** What the page may not bring into a PDF/A-2; null for nothing. */
  @Nullable String archiveFault() {
    return archive.first();
  }

  InkBoxes ink() {
    return ink;
  }

  List<PlacedImage> images() {
    return List.copyOf(images);
  }

  FineDetail fine() {
    return new FineDetail(found(line), found(lettering), found(gap));
  }

  private static @Nullable Double found(double value) {
    return Double.isInfinite(value) ? null : value;
  }

  @Override
  protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
    steps.next(operator.getName());
    archive.operator(operator.getName(), operands, getGraphicsStackSize());
    if (getLevel() > DEEPEST) {
      throw new IOException("its forms lie more than " + DEEPEST + " deep inside one another");
    }
    if (!fonts.passesOver(operator.getName(), operands)) {
      super.processOperator(operator, operands);
    }
  }

  @Override
  protected void unsupportedOperator(Operator operator, List<COSBase> operands) throws IOException {
    throw new IOException("the unknown operator '" + operator.getName() + "'");
  }

  @Override
  protected void operatorException(Operator operator, List<COSBase> operands, IOException e)
      throws IOException {
    if (e instanceof MissingOperandException) {
      throw new IOException("the operator '" + operator.getName() + "' without its operands", e);
    }
    throw e;
  }

  @Override
  public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
    path.moveTo((float) p0.getX(), (float) p0.getY());
    path.lineTo((float) p1.getX(), (float) p1.getY());
    path.lineTo((float) p2.getX(), (float) p2.getY());
    path.lineTo((float) p3.getX(), (float) p3.getY());
    path.closePath();
  }

  @Override
  public void moveTo(float x, float y) {
    path.moveTo(x, y);
  }

  @Override
  public void lineTo(float x, float y) {
    if (path.getCurrentPoint() == null) {
      path.moveTo(x, y);
    } else {
      path.lineTo(x, y);
    }
  }

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    if (path.getCurrentPoint() == null) {
      path.moveTo(x3, y3);
    } else {
      path.curveTo(x1, y1, x2, y2, x3, y3);
    }
  }

  @Override
  public @Nullable Point2D getCurrentPoint() {
    return path.getCurrentPoint();
  }

  @Override
  public void closePath() {
    if (path.getCurrentPoint() != null) {
      path.closePath();
    }
  }

  @Override
  public void clip(int windingRule) {
    clipRule = windingRule;
  }

  @Override
  public void endPath() {
    if (clipRule >= 0) {
      path.setWindingRule(clipRule);
      getGraphicsState().intersectClippingPath((GeneralPath) path.clone());
      clipRule = -1;
    }
    path.reset();
  }

  @Override
  public void fillPath(int windingRule) throws IOException {
    fill(windingRule);
    endPath();
  }

  @Override
  public void strokePath() throws IOException {
    stroke(path);
    endPath();
  }

  @Override
  public void fillAndStrokePath(int windingRule) throws IOException {
    fill(windingRule);
    stroke(path);
    endPath();
  }

  private void fill(int windingRule) throws IOException {
    path.setWindingRule(windingRule);
    PDGraphicsState state = getGraphicsState();
    Paint paint = paint(state.getNonStrokingColor(), state.getNonStrokeAlphaConstant());
    ink.fill(path, toUnits, paint, clip());
  }

  private void stroke(Shape shape) throws IOException {
    PDGraphicsState state = getGraphicsState();
    InkBoxes.Kind kind = InkBoxes.kind(paint(state.getStrokingColor(), state.getAlphaConstant()));
    if (kind == null) {
      return;
    }
    double width = transformWidth(state.getLineWidth());
    Shape stroked = pen(state, width).createStrokedShape(shape);
    Shape there = toUnits.createTransformedShape(stroked);
    ink.add(there, clip(), kind);
    if (kind == InkBoxes.Kind.INK && there.getBounds2D().intersects(shown)) {
      line = Math.min(line, width);
      gap = Math.min(gap, gap(state, width));
    }
  }

  private static BasicStroke pen(PDGraphicsState state, double width) {
    // Caps and joins have the same numbers in PDF (8.4.3.3, 8.4.3.4) as in Java.
    int join = Math.floorMod(state.getLineJoin(), 3);
    float miter = Math.max(1, state.getMiterLimit());
    return new BasicStroke((float) width, Math.floorMod(state.getLineCap(), 3), join, miter);
  }

  /** The narrowest clear gap of the dashes, after caps that reach into both its ends. */
  private double gap(PDGraphicsState state, double width) {
    float[] dashes = state.getLineDashPattern().getDashArray();
    double caps = state.getLineCap() == 0 ? 0 : width;
    double narrowest = Double.POSITIVE_INFINITY;
    boolean odd = dashes.length % 2 == 1;
    for (int i = odd ? 0 : 1; i < dashes.length; i += odd ? 1 : 2) {
      if (dashes[i] > 0) {
        narrowest = Math.min(narrowest, Math.max(0, transformWidth(dashes[i]) - caps));
      }
    }
    return narrowest;
  }

  @Override
  protected void showFontGlyph(Matrix at, PDFont font, int code, Vector displacement)
      throws IOException {
    archive.glyph(font, code);
    RenderingMode mode = getGraphicsState().getTextState().getRenderingMode();
    if (!mode.isFill() && !mode.isStroke()) {
      return;
    }
    if (font.isDamaged()) {
      throw new IOException("the damaged typeface " + font.getName());
    }
    AffineTransform glyph = at.createAffineTransform();
    AffineTransform em = font.getFontMatrix().createAffineTransform();
    double size = least(glyph);
    glyph.concatenate(em);
    Path2D outline = font instanceof PDVectorFont vector ? vector.getNormalizedPath(code) : null;
    if (outline == null || outline.getCurrentPoint() == null) {
      return;
    }
    Shape shape = glyph.createTransformedShape(outline);
    PDGraphicsState state = getGraphicsState();
    if (mode.isFill()) {
      Paint paint = paint(state.getNonStrokingColor(), state.getNonStrokeAlphaConstant());
      InkBoxes.Kind kind = InkBoxes.kind(paint);
      if (kind != null) {
        ink.add(toUnits.createTransformedShape(shape), clip(), kind);
      }
    }
    if (mode.isStroke()) {
      stroke(shape);
    }
    lettering = Math.min(lettering, CAPITAL * size);
  }

  @Override
  public void drawImage(PDImage image) throws IOException {
    AffineTransform at =
        getGraphicsState().getCurrentTransformationMatrix().createAffineTransform();
    Shape there = at.createTransformedShape(new Rectangle2D.Double(0, 0, 1, 1));
    ink.add(toUnits.createTransformedShape(there), clip(), InkBoxes.Kind.INK);
    double width = Math.hypot(at.getScaleX(), at.getShearY());
    double height = Math.hypot(at.getShearX(), at.getScaleY());
    if (width > 0 && height > 0) {
      images.add(new PlacedImage(image.getWidth(), image.getHeight(), width, height));
    }
    if (image instanceof PDImageXObject object) {
      PdfGuard.checkPicture(object);
    }
  }

  @Override
  public void shadingFill(COSName name) {
    ink.add(clip(), shown, InkBoxes.Kind.INK);
  }

  private Shape clip() {
    Shape page = toUnits.createTransformedShape(getGraphicsState().getCurrentClippingPath());
    return page.contains(shown) ? shown : InkBoxes.cut(page, shown);
  }

  /** A colour with its opacity; what is no plain colour stands as ink. */
  private static @Nullable Paint paint(PDColor color, double alpha) throws IOException {
    if (color.getColorSpace() instanceof PDPattern || color.isPattern()) {
      return new Color(0, 0, 0, level(alpha));
    }
    int rgb = color.toRGB();
    return new Color(rgb >> 16 & 255, rgb >> 8 & 255, rgb & 255, level(alpha));
  }

  private static int level(double alpha) {
    return (int) Math.round(255 * Math.max(0, Math.min(1, alpha)));
  }

  /** The scale of a transform in the direction in which it is least: its lesser singular value. */
  private static double least(AffineTransform t) {
    double sum = Math.hypot(t.getScaleX() + t.getScaleY(), t.getShearY() - t.getShearX());
    double difference = Math.hypot(t.getScaleX() - t.getScaleY(), t.getShearY() + t.getShearX());
    return Math.abs(sum - difference) / 2;
  }
}
