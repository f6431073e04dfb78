package dev.placket.demo.made;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** A page in black and white alone, 400 dots to the inch. */
final class OneBit {
  private static final int PER_INCH = 400;
  private static final double PER_MM = PER_INCH / 25.4;

  private final int width;
  private final int height;
  private final float[] ink;
  private final boolean[] black;

  private OneBit(BufferedImage image) {
    width = image.getWidth();
    height = image.getHeight();
    ink = new float[width * height];
    black = new boolean[width * height];
    int[] row = new int[width];
    for (int y = 0; y < height; y++) {
      image.getRGB(0, y, width, 1, row, 0, width);
      for (int x = 0; x < width; x++) {
        // Luma of ITU-R BT.601, as drivers of printers have it (from memory).
        double luma =
            0.299 * (row[x] >> 16 & 255) + 0.587 * (row[x] >> 8 & 255) + 0.114 * (row[x] & 255);
        ink[y * width + x] = (float) (1 - luma / 255);
      }
    }
  }

  /** Black where there is more ink than half. */
  static OneBit cut(Path pdf, int page) throws IOException {
    OneBit bits = new OneBit(render(pdf, page));
    for (int i = 0; i < bits.ink.length; i++) {
      bits.black[i] = bits.ink[i] > 0.5;
    }
    return bits;
  }

  /** Greys as dots, by the error diffusion of Floyd and Steinberg (1976). */
  static OneBit dotted(Path pdf, int page) throws IOException {
    OneBit bits = new OneBit(render(pdf, page));
    float[] left = bits.ink.clone();
    int w = bits.width;
    for (int y = 0; y < bits.height; y++) {
      for (int x = 0; x < w; x++) {
        int i = y * w + x;
        bits.black[i] = left[i] > 0.5;
        float error = left[i] - (bits.black[i] ? 1 : 0);
        give(left, x + 1 < w, i + 1, error * 7 / 16);
        give(left, x > 0 && y + 1 < bits.height, i + w - 1, error * 3 / 16);
        give(left, y + 1 < bits.height, i + w, error * 5 / 16);
        give(left, x + 1 < w && y + 1 < bits.height, i + w + 1, error / 16);
      }
    }
    return bits;
  }

  private static void give(float[] left, boolean there, int i, float error) {
    if (there) {
      left[i] += error;
    }
  }

  private static BufferedImage render(Path pdf, int page) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      PDFRenderer renderer = new PDFRenderer(document);
      renderer.setRenderingHints(Pages.hints());
      return renderer.renderImageWithDPI(page, PER_INCH, ImageType.RGB);
    }
  }

  /** Whether a point is black, in millimetres from the top left. */
  boolean blackAt(double x, double y) {
    return black[(int) (y * PER_MM) * width + (int) (x * PER_MM)];
  }

  /** The black share of a part, in millimetres from the top left. */
  double share(double left, double top, double right, double bottom) {
    return sum(left, top, right, bottom, true)
        / ((Math.floor(right * PER_MM) - Math.floor(left * PER_MM) + 1)
            * (Math.floor(bottom * PER_MM) - Math.floor(top * PER_MM) + 1));
  }

  /** The ink of a part over the ink it has in grey. */
  double kept(double left, double top, double right, double bottom) {
    return sum(left, top, right, bottom, true) / sum(left, top, right, bottom, false);
  }

  private double sum(double left, double top, double right, double bottom, boolean bits) {
    double sum = 0;
    for (int y = (int) (top * PER_MM); y <= (int) (bottom * PER_MM); y++) {
      for (int x = (int) (left * PER_MM); x <= (int) (right * PER_MM); x++) {
        int i = y * width + x;
        sum += bits ? (black[i] ? 1 : 0) : ink[i];
      }
    }
    return sum;
  }

  /** How many black runs a level cut meets, in millimetres from the top left. */
  int runs(double left, double right, double y) {
    int runs = 0;
    boolean before = false;
    for (double x = left; x <= right; x += 0.5 / PER_MM) {
      boolean now = blackAt(x, y);
      runs += now && !before ? 1 : 0;
      before = now;
    }
    return runs;
  }
}
