package dev.placket.packs.page;

import dev.placket.pictures.base.StoredJpeg;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceGray;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/**
 * Puts the pixels of a picture into a document: as the JPEG of their file if that is lighter, else
 * without loss. Nothing is encoded with loss.
 */
public final class Embedded {
  private Embedded() {}

  static PDImageXObject image(PDDocument document, Art.Pixels pixels) throws IOException {
    PDImageXObject plain = LosslessFactory.createFromImage(document, pixels.image());
    StoredJpeg jpeg = pixels.jpeg();
    return jpeg == null || jpeg.bytes().length >= weight(plain) ? plain : stored(document, jpeg);
  }

  /** The very bytes, which readers decode (ISO 32000-1, 7.4.8). */
  private static PDImageXObject stored(PDDocument document, StoredJpeg jpeg) throws IOException {
    return new PDImageXObject(
        document,
        new ByteArrayInputStream(jpeg.bytes()),
        COSName.DCT_DECODE,
        jpeg.width(),
        jpeg.height(),
        8,
        jpeg.grey() ? PDDeviceGray.INSTANCE : PDDeviceRGB.INSTANCE);
  }

  private static long weight(PDImageXObject image) throws IOException {
    PDImageXObject mask = image.getSoftMask();
    return image.getStream().getLength() + (mask == null ? 0 : mask.getStream().getLength());
  }

  /** The bytes that a picture takes in a document, its mask included. */
  public static long bytes(Art.Pixels pixels) throws IOException {
    try (PDDocument scratch = new PDDocument()) {
      return weight(image(scratch, pixels));
    }
  }
}
