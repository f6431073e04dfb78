package dev.placket.packs.page;

import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.units.Rect;
import dev.placket.pictures.PdfDrawing;
import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.IdentityHashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.multipdf.PDFCloneUtility;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.util.Matrix;

/**
 * Pages of other PDFs as forms of a document (ISO 32000-1, 8.10): each page once, and what pages of
 * one file share, once.
 */
final class PlacedPages {
  private final PDDocument document;
  private final PDFCloneUtility cloner;
  private final Map<PDPage, PDFormXObject> forms = new IdentityHashMap<>();

  PlacedPages(PDDocument document) {
    this.document = document;
    this.cloner = new PDFCloneUtility(document) {};
  }

  /**
   * A page at its place. The matrix stands in a form of its own, which keeps all its digits; an
   * operator would have five decimals.
   *
   * @param at where its ink lies, in points on the sheet
   * @param pageHeight the height of the sheet, in points
   */
  PDFormXObject form(Art.PdfPart part, Rect at, double pageHeight) throws IOException {
    PDFormXObject page = page(part.drawing());
    PDFormXObject placed = new PDFormXObject(document);
    PDResources resources = new PDResources();
    COSName name = resources.add(page);
    placed.setResources(resources);
    placed.setBBox(new PDRectangle((float) width(part), (float) height(part)));
    InkedBox ink = part.ink();
    double s = part.scale();
    AffineTransform matrix = new AffineTransform();
    matrix.translate(
        at.left() - ink.left() * s, pageHeight - (at.top() - ink.top() * s) - height(part) * s);
    matrix.scale(s, s);
    placed.setMatrix(matrix);
    try (OutputStream out = placed.getContentStream().createOutputStream()) {
      out.write(("/" + name.getName() + " Do").getBytes(StandardCharsets.US_ASCII));
    }
    return placed;
  }

  private static double width(Art.PdfPart part) {
    return part.drawing().viewBox().width();
  }

  private static double height(Art.PdfPart part) {
    return part.drawing().viewBox().height();
  }

  private PDFormXObject page(PdfDrawing drawing) throws IOException {
    PDFormXObject known = forms.get(drawing.page());
    if (known != null) {
      return known;
    }
    PDPage page = drawing.page();
    COSStream stream = document.getDocument().createCOSStream();
    stream.setItem(COSName.TYPE, COSName.XOBJECT);
    stream.setItem(COSName.SUBTYPE, COSName.FORM);
    try (InputStream in = page.getContents();
        OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
      in.transferTo(out);
    }
    PDFormXObject form = new PDFormXObject(stream);
    form.setBBox(page.getCropBox());
    form.setMatrix(upright(page));
    COSDictionary resources = page.getCOSObject().getCOSDictionary(COSName.RESOURCES);
    synchronized (drawing.document()) {
      stream.setItem(COSName.RESOURCES, cloner.cloneForNewDocument(resources));
      COSBase group = page.getCOSObject().getDictionaryObject(COSName.GROUP);
      if (group != null) {
        stream.setItem(COSName.GROUP, cloner.cloneForNewDocument(group));
      }
    }
    forms.put(page, form);
    return form;
  }

  /** From the space of a page to its upright box with its lower left corner at the origin. */
  private static AffineTransform upright(PDPage page) {
    PDRectangle box = page.getCropBox();
    Matrix matrix = new Matrix();
    switch (page.getRotation()) {
      case 90 -> matrix = new Matrix(0, -1, 1, 0, 0, box.getWidth());
      case 180 -> matrix = new Matrix(-1, 0, 0, -1, box.getWidth(), box.getHeight());
      case 270 -> matrix = new Matrix(0, 1, -1, 0, box.getHeight(), 0);
      default -> {}
    }
    AffineTransform at = matrix.createAffineTransform();
    at.translate(-box.getLowerLeftX(), -box.getLowerLeftY());
    return at;
  }
}
