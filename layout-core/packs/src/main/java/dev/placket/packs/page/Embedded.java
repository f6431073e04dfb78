package dev.placket.packs.page;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/** Puts the pixels of a picture into a document, without loss. */
public final class Embedded {
  private Embedded() {}

  static PDImageXObject image(PDDocument document, Art.Pixels pixels) throws IOException {
    return LosslessFactory.createFromImage(document, pixels.image());
  }

  /** The bytes that a picture takes in a document, its mask included. */
  public static long bytes(Art.Pixels pixels) throws IOException {
    try (PDDocument scratch = new PDDocument()) {
      PDImageXObject image = image(scratch, pixels);
      PDImageXObject mask = image.getSoftMask();
      return image.getStream().getLength() + (mask == null ? 0 : mask.getStream().getLength());
    }
  }
}
