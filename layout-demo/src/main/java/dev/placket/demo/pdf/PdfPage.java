package dev.placket.demo.pdf;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import dev.placket.demo.sheet.Cell;
import dev.placket.demo.sheet.Lettering;
import dev.placket.demo.sheet.Page;
import dev.placket.demo.sheet.TextRun;
import dev.placket.layout.sheet.Rule;
import dev.placket.layout.units.Box;
import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;

/** Draws one sheet: rules, the text of its cells, and its flats with their captions. */
final class PdfPage {
  /** Units of a drawing's form per point. */
  private static final int FINE = 100;

  private final PDDocument document;
  private final PDPage page;
  private final PDType0Font font;
  private final Lettering lettering;
  private final Tags tags;
  private final float width;
  private final float height;

  PdfPage(PDDocument document, Page content, PDType0Font font, Lettering lettering, Tags tags) {
    this.document = document;
    this.font = font;
    this.lettering = lettering;
    this.tags = tags;
    this.width = (float) content.sheet().paper().width().pt();
    this.height = (float) content.sheet().paper().height().pt();
    this.page = new PDPage(new PDRectangle(width, height));
    document.addPage(page);
  }

  void draw(Page content, List<Inked> flats) throws IOException {
    tags.open(page);
    try (PDPageContentStream out = new PDPageContentStream(document, page)) {
      out.beginMarkedContent(COSName.ARTIFACT);
      content.sheet().rules().forEach(r -> line(out, r));
      out.endMarkedContent();
      for (Cell cell : content.cells()) {
        text(out, cell.runs());
      }
      for (Inked flat : flats) {
        out.beginMarkedContent(Tags.FIGURE, tags.figure(flat.alternative(), flat.ink(), height));
        draw(out, flat);
        out.endMarkedContent();
        text(out, flat.caption());
      }
    }
    tags.close();
  }

  private void line(PDPageContentStream out, Rule rule) {
    Box a = rule.axis();
    // A rule's ink is its axis grown on all sides, so that corners and crossings are whole.
    Box ink = rule.ink();
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

  private void text(PDPageContentStream out, List<TextRun> runs) throws IOException {
    if (runs.isEmpty()) {
      return;
    }
    out.beginMarkedContent(COSName.P, tags.paragraph());
    out.beginText();
    double x = 0;
    double y = 0;
    for (TextRun run : runs) {
      out.setFont(font, (float) lettering.em(run.capitalHeight()));
      double toY = height - run.baseline();
      out.newLineAtOffset((float) (run.left() - x), (float) (toY - y));
      out.showText(run.text());
      x = run.left();
      y = toY;
    }
    out.endText();
    out.endMarkedContent();
  }

  private void draw(PDPageContentStream out, Inked flat) throws IOException {
    if (flat.art() instanceof Art.Pixels pixels) {
      Box at = flat.ink();
      out.drawImage(
          LosslessFactory.createFromImage(document, pixels.image()),
          (float) at.left(),
          up(at.bottom()),
          (float) at.width(),
          (float) at.height());
    } else if (flat.art() instanceof Art.Paths paths) {
      out.drawForm(form(paths, flat.ink()));
    }
  }

  /**
   * The drawing in the sheet's own coordinates, in hundredths of a point: its points are
   * transformed, since a matrix of five decimals would not hold a scale. Hundredths, because
   * readers exist that take the phase of a dash as a whole number.
   */
  private PDFormXObject form(Art.Paths paths, Box ink) throws IOException {
    PdfBoxGraphics2D g = new PdfBoxGraphics2D(document, width * FINE, height * FINE);
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
