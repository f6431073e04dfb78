package dev.placket.demo.made;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.File;
import java.io.IOException;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The preview is drawn apart from the PDF, so it is held against PDFBox's rendering of that. */
class PreviewTest {
  private static final int PER_INCH = 110;

  @ParameterizedTest
  @MethodSource("dev.placket.demo.made.MadeSheet#all")
  void showsWhatThePdfShows(String name) throws IOException {
    MadeSheet made = MadeSheet.of(name);
    String pdf = made.pdf().toString();
    File png = new File(pdf.substring(0, pdf.length() - 4) + ".png");
    BufferedImage preview = asStored(ImageIO.read(png));
    BufferedImage page = page(made);
    // PDFBox rounds the size of a page down, the preview to the nearest.
    assertEquals(page.getWidth(), preview.getWidth(), 1);
    assertEquals(page.getHeight(), preview.getHeight(), 1);
    int width = Math.min(page.getWidth(), preview.getWidth());
    int height = Math.min(page.getHeight(), preview.getHeight());
    Rectangle all = new Rectangle(width, height);
    double same = Pages.correlation(Pages.ink(page, all), Pages.ink(preview, all));
    assertTrue(same >= 0.98, "correlates at " + same);
  }

  /** Greys as they are stored: getRGB takes those of a grey image for light that is not sRGB. */
  private static BufferedImage asStored(BufferedImage read) {
    if (read.getRaster().getNumBands() != 1 || read.getColorModel() instanceof IndexColorModel) {
      return read;
    }
    BufferedImage stored =
        new BufferedImage(read.getWidth(), read.getHeight(), BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < read.getHeight(); y++) {
      for (int x = 0; x < read.getWidth(); x++) {
        stored.setRGB(x, y, read.getRaster().getSample(x, y, 0) * 0x010101);
      }
    }
    return stored;
  }

  private static BufferedImage page(MadeSheet made) throws IOException {
    try (PDDocument document = Loader.loadPDF(made.pdf().toFile())) {
      PDFRenderer renderer = new PDFRenderer(document);
      renderer.setRenderingHints(Pages.hints());
      return renderer.renderImageWithDPI(0, PER_INCH, ImageType.RGB);
    }
  }
}
