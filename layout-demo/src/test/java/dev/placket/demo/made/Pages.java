package dev.placket.demo.made;

import com.fasterxml.jackson.databind.JsonNode;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Pages as pixels, and where boxes of {@code fit.json} lie among them. */
final class Pages {
  /** Pixels per inch, as a sheet is looked at on a screen. */
  static final int PER_INCH = 150;

  /** Pixels per point. */
  static final double PER_POINT = PER_INCH / 72.0;

  private Pages() {}

  /** The first page as PDFBox shows it. */
  static BufferedImage render(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      PDFRenderer renderer = new PDFRenderer(document);
      renderer.setRenderingHints(hints());
      return renderer.renderImageWithDPI(0, PER_INCH, ImageType.RGB);
    }
  }

  /** Lines where they are: by default Java moves them by up to half a pixel onto the grid. */
  static RenderingHints hints() {
    RenderingHints hints =
        new RenderingHints(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    hints.put(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    hints.put(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    return hints;
  }

  /** Every pixel that a box touches, and so many more on each side. */
  static Rectangle pixels(JsonNode box, int more) {
    int left = (int) Math.floor(box.path("left").asDouble() * PER_POINT) - more;
    int top = (int) Math.floor(box.path("top").asDouble() * PER_POINT) - more;
    int right = (int) Math.ceil(box.path("right").asDouble() * PER_POINT) + more;
    int bottom = (int) Math.ceil(box.path("bottom").asDouble() * PER_POINT) + more;
    return new Rectangle(left, top, right - left, bottom - top);
  }

  /** How many pixels of a part differ between two pages. */
  static int changed(BufferedImage a, BufferedImage b, Rectangle part) {
    int changed = 0;
    for (int y = part.y; y < part.y + part.height; y++) {
      for (int x = part.x; x < part.x + part.width; x++) {
        changed += a.getRGB(x, y) == b.getRGB(x, y) ? 0 : 1;
      }
    }
    return changed;
  }

  /** Ink by pixel, row by row: 0 for white, 1 for black. */
  static double[] ink(BufferedImage image, Rectangle part) {
    double[] ink = new double[part.width * part.height];
    for (int y = 0; y < part.height; y++) {
      for (int x = 0; x < part.width; x++) {
        int rgb = image.getRGB(part.x + x, part.y + y);
        int sum = (rgb >> 16 & 255) + (rgb >> 8 & 255) + (rgb & 255);
        ink[y * part.width + x] = 1 - sum / 765.0;
      }
    }
    return ink;
  }

  /** Pearson's correlation of two lists of one length. */
  static double correlation(double[] a, double[] b) {
    double meanA = mean(a);
    double meanB = mean(b);
    double both = 0;
    double ownA = 0;
    double ownB = 0;
    for (int i = 0; i < a.length; i++) {
      both += (a[i] - meanA) * (b[i] - meanB);
      ownA += (a[i] - meanA) * (a[i] - meanA);
      ownB += (b[i] - meanB) * (b[i] - meanB);
    }
    return both / Math.sqrt(ownA * ownB);
  }

  private static double mean(double[] values) {
    double sum = 0;
    for (double v : values) {
      sum += v;
    }
    return sum / values.length;
  }
}
