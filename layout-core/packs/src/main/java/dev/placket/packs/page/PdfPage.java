package dev.placket.packs.page;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import dev.placket.layout.sheet.Rule;
import dev.placket.layout.units.PlanePoint;
import dev.placket.layout.units.Rect;
import dev.placket.packs.callouts.LaidText;
import dev.placket.packs.dimensions.LaidDimension;
import dev.placket.packs.text.Cell;
import dev.placket.packs.text.Lettering;
import dev.placket.packs.text.TextRun;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;

/** Draws one sheet: rules, the text of its cells, and its flats with their captions. */
final class PdfPage {
  /** Units of a drawing's form per point. */
  private static final int FINE = 100;

  /** Strong lettering is drawn over with a line of this share of the em. */
  private static final double STRONG = 0.035;

  /** The same for the least lettering, whose letters would close up. */
  private static final double STRONG_SMALL = 0.024;

  /** Rounded, since the sharp corners of an M would grow spikes. */
  private static final int ROUND_JOIN = 1;

  private final PDDocument document;
  private final PDPage page;
  private final Fonts fonts;
  private final Tags tags;
  private final PlacedPages placed;
  private final Spans spans;
  private final float width;
  private final float height;

  PdfPage(
      PDDocument document, Page content, Fonts fonts, Tags tags, PlacedPages placed, Spans spans) {
    this.document = document;
    this.fonts = fonts;
    this.tags = tags;
    this.placed = placed;
    this.spans = spans;
    this.width = (float) content.sheet().paper().width().pt();
    this.height = (float) content.sheet().paper().height().pt();
    this.page = new PDPage(new PDRectangle(width, height));
    document.addPage(page);
  }

  void draw(Page content, List<Inked> flats, List<RevisionMark> marks) throws IOException {
    tags.open(page);
    try (PDPageContentStream out = new PDPageContentStream(document, page)) {
      out.beginMarkedContent(COSName.ARTIFACT);
      ground(out, content.tints(), (float) Page.TINT);
      ground(out, content.blacks(), 0f);
      content.sheet().rules().forEach(r -> line(out, r));
      out.endMarkedContent();
      for (Cell cell : content.cells()) {
        text(out, cell.runs());
      }
      for (Inked picture : content.pictures()) {
        out.beginMarkedContent(
            Tags.FIGURE, tags.figure(picture.alternative(), picture.ink(), height));
        draw(out, picture);
        out.endMarkedContent();
      }
      for (Inked flat : flats) {
        out.beginMarkedContent(Tags.FIGURE, tags.figure(flat.alternative(), flat.ink(), height));
        draw(out, flat);
        flat.marks().forEach(m -> line(out, m));
        for (LaidDimension dimension : flat.dimensions()) {
          dimension(out, dimension);
        }
        for (LaidText callout : flat.callouts()) {
          leader(out, callout);
        }
        out.endMarkedContent();
        text(out, flat.caption());
        for (LaidDimension dimension : flat.dimensions()) {
          text(out, dimension.runs());
        }
        for (LaidText callout : flat.callouts()) {
          text(out, callout.runs());
        }
      }
      for (RevisionMark mark : marks) {
        out.beginMarkedContent(COSName.ARTIFACT);
        out.setLineWidth((float) LeaderShapes.LINE);
        path(out, triangle(mark));
        out.stroke();
        mark.strikes().forEach(s -> line(out, s));
        out.endMarkedContent();
        text(out, mark.runs());
      }
    }
    tags.close();
  }

  /** The outline of a mark's triangle; nothing where it has none. */
  static Path2D triangle(RevisionMark mark) {
    Path2D path = new Path2D.Double();
    for (PlanePoint p : mark.triangle()) {
      if (path.getCurrentPoint() == null) {
        path.moveTo(p.x(), p.y());
      } else {
        path.lineTo(p.x(), p.y());
      }
    }
    if (path.getCurrentPoint() != null) {
      path.closePath();
    }
    return path;
  }

  private void line(PDPageContentStream out, Rule rule) {
    Rect a = rule.axis();
    // A rule's ink is its axis grown on all sides, so that corners and crossings are whole.
    Rect ink = rule.ink();
    try {
      out.setLineWidth((float) rule.width().pt());
      if (a.width() == 0) {
        out.moveTo((float) a.left(), up(ink.top()));
        out.lineTo((float) a.left(), up(ink.bottom()));
      } else {
        out.moveTo((float) ink.left(), up(a.top()));
        out.lineTo((float) ink.right(), up(a.top()));
      }
      out.stroke();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private void dimension(PDPageContentStream out, LaidDimension d) throws IOException {
    mark(out, DimensionShapes.ground(d), DimensionShapes.arrows(d), DimensionShapes.lines(d));
  }

  private void leader(PDPageContentStream out, LaidText c) throws IOException {
    mark(out, LeaderShapes.halos(c), LeaderShapes.ends(c), LeaderShapes.lines(c));
  }

  private void mark(PDPageContentStream out, Shape white, Shape black, Shape lines)
      throws IOException {
    fill(out, white, 1f);
    fill(out, black, 0f);
    out.setLineWidth((float) LeaderShapes.LINE);
    path(out, lines);
    out.stroke();
  }

  private void fill(PDPageContentStream out, Shape shape, float grey) throws IOException {
    out.setNonStrokingColor(grey);
    if (!shape.getBounds2D().isEmpty()) {
      path(out, shape);
      out.fill();
    }
  }

  private void path(PDPageContentStream out, Shape shape) throws IOException {
    float[] c = new float[6];
    for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
      switch (i.currentSegment(c)) {
        case PathIterator.SEG_MOVETO -> out.moveTo(c[0], height - c[1]);
        case PathIterator.SEG_LINETO -> out.lineTo(c[0], height - c[1]);
        case PathIterator.SEG_CUBICTO ->
            out.curveTo(c[0], height - c[1], c[2], height - c[3], c[4], height - c[5]);
        default -> out.closePath();
      }
    }
  }

  private void ground(PDPageContentStream out, List<Rect> boxes, float grey) throws IOException {
    if (boxes.isEmpty()) {
      return;
    }
    out.setNonStrokingColor(grey);
    for (Rect b : boxes) {
      out.addRect((float) b.left(), up(b.bottom()), (float) b.width(), (float) b.height());
      out.fill();
    }
    out.setNonStrokingColor(0f);
  }

  private void text(PDPageContentStream out, List<TextRun> runs) throws IOException {
    if (runs.isEmpty()) {
      return;
    }
    out.beginMarkedContent(COSName.P, tags.paragraph());
    out.saveGraphicsState();
    out.beginText();
    double x = 0;
    double y = 0;
    boolean white = false;
    for (TextRun run : runs) {
      if (run.white() != white) {
        white = run.white();
        out.setNonStrokingColor(white ? 1f : 0f);
        out.setStrokingColor(white ? 1f : 0f);
      }
      float em = (float) (run.capitalHeight().pt() / run.face().capitals());
      out.setFont(fonts.of(run.face()), em);
      out.setRenderingMode(run.strong() ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
      if (run.strong()) {
        out.setLineWidth(strongLine(run));
        out.setLineJoinStyle(ROUND_JOIN);
      }
      double toY = height - run.baseline();
      out.newLineAtOffset((float) (run.left() - x), (float) (toY - y));
      spans.show(out, run);
      x = run.left();
      y = toY;
    }
    out.endText();
    out.restoreGraphicsState();
    out.endMarkedContent();
  }

  /** The width of the line that strong lettering is drawn over with, in points. */
  static float strongLine(TextRun run) {
    boolean least = run.capitalHeight().compareTo(Lettering.CAPTION) <= 0;
    double em = run.capitalHeight().pt() / run.face().capitals();
    return (float) ((least ? STRONG_SMALL : STRONG) * em);
  }

  private void draw(PDPageContentStream out, Inked flat) throws IOException {
    if (flat.art() instanceof Art.Pixels pixels) {
      Rect at = flat.ink();
      out.drawImage(
          Embedded.image(document, pixels),
          (float) at.left(),
          up(at.bottom()),
          (float) at.width(),
          (float) at.height());
    } else if (flat.art() instanceof Art.Paths paths) {
      out.drawForm(form(paths, flat.ink()));
    } else if (flat.art() instanceof Art.PdfPart part) {
      out.drawForm(placed.form(part, flat.ink(), height));
    }
  }

  /**
   * The drawing in the sheet's own coordinates, in hundredths of a point: its points are
   * transformed, since a matrix of five decimals would not hold a scale. Hundredths, because
   * readers exist that take the phase of a dash as a whole number.
   */
  private PDFormXObject form(Art.Paths paths, Rect ink) throws IOException {
    PdfBoxGraphics2D g = new PdfLayers(document, width * FINE, height * FINE).graphics();
    g.scale(FINE, FINE);
    double s = paths.scale();
    g.translate(ink.left() - paths.ink().left() * s, ink.top() - paths.ink().top() * s);
    g.scale(s, s);
    paths.painter().accept(g);
    g.dispose();
    PDFormXObject form = g.getXFormObject();
    form.setMatrix(AffineTransform.getScaleInstance(1.0 / FINE, 1.0 / FINE));
    return form;
  }

  private float up(double fromTop) {
    return (float) (height - fromTop);
  }
}
