package dev.placket.pictures.pdf;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.ReadLimits;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;

/** PDFs of the tests, made operator by operator. */
final class MadePdf {
  final PDDocument document = new PDDocument();

  /** A page of 200 by 100 points with this content. */
  PDPage page(String content) throws IOException {
    return page(content, new PDRectangle(200, 100));
  }

  PDPage page(String content, PDRectangle box) throws IOException {
    PDPage page = new PDPage(box);
    PDStream stream = new PDStream(document);
    try (OutputStream out = stream.createOutputStream()) {
      out.write(content.getBytes(StandardCharsets.ISO_8859_1));
    }
    page.setContents(stream);
    page.setResources(new PDResources());
    document.addPage(page);
    return page;
  }

  /** A form with this content, under a name of its page. */
  COSStream form(PDPage page, String name, String content) throws IOException {
    COSStream form = document.getDocument().createCOSStream();
    form.setItem(COSName.TYPE, COSName.XOBJECT);
    form.setItem(COSName.SUBTYPE, COSName.FORM);
    form.setItem(COSName.BBOX, new PDRectangle(200, 100));
    form.setItem(COSName.RESOURCES, new COSDictionary());
    try (OutputStream out = form.createOutputStream(COSName.FLATE_DECODE)) {
      out.write(content.getBytes(StandardCharsets.ISO_8859_1));
    }
    put(page.getResources().getCOSObject(), COSName.XOBJECT, name, form);
    return form;
  }

  static void put(COSDictionary resources, COSName kind, String name, COSDictionary what) {
    COSDictionary all = resources.getCOSDictionary(kind);
    if (all == null) {
      all = new COSDictionary();
      resources.setItem(kind, all);
    }
    all.setItem(COSName.getPDFName(name), what);
  }

  byte[] bytes() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    document.save(out);
    document.close();
    return out.toByteArray();
  }

  PdfFile open() throws IOException, PictureException {
    return open(ReadLimits.DEFAULT);
  }

  PdfFile open(ReadLimits limits) throws IOException, PictureException {
    return PdfFile.open("style.pdf", bytes(), limits);
  }

  OpenPage only() throws IOException, PictureException {
    return open().page(1, Set.of());
  }
}
