package dev.placket.benchmarks.reading;

import dev.placket.benchmarks.outside.Row;
import dev.placket.benchmarks.outside.Times;
import dev.placket.pictures.PictureReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;

/** The inked box of 2550 by 3300 decoded pixels. */
public final class InkTimes {
  private static final int WIDTH = 2550;
  private static final int HEIGHT = 3300;

  private final Path work;
  private final Vips vips;

  /** Measures with files in a folder. */
  public InkTimes(Path work, Vips vips) {
    this.work = work;
    this.vips = vips;
  }

  /** A line drawing on white and on nothing against a trim, and the worst against memory. */
  public List<Row> measure() throws IOException {
    List<Row> rows = new ArrayList<>();
    BufferedImage page = LargePicture.drawing(WIDTH, HEIGHT, true);
    Path png = work.resolve("ink.png");
    ImageIO.write(page, "png", png.toFile());
    @Nullable Double trim = vips.installed() ? vips.trim(vips.convert(png, "ink.v")) : null;
    rows.add(Row.time("inked box on white", box(argb(page)), trim, "libvips trim", 0.1));
    int[] clear = argb(LargePicture.drawing(WIDTH, HEIGHT, false));
    rows.add(Row.time("inked box on a clear ground", box(clear), trim, "libvips trim", 0.1));
    int[] dot = new int[WIDTH * HEIGHT];
    Arrays.fill(dot, 0xFFFFFFFF);
    dot[HEIGHT / 2 * WIDTH + WIDTH / 2] = 0xFF000000;
    double read = Times.median(4, () -> sum(dot));
    rows.add(Row.time("inked box, worst: one dot", box(dot), read, "one read of memory", 1.6));
    int[] blank = new int[WIDTH * HEIGHT];
    rows.add(Row.time("inked box, worst: blank", box(blank), read, "one read of memory", 1.6));
    return rows;
  }

  private static int[] argb(BufferedImage image) {
    return image.getRGB(0, 0, WIDTH, HEIGHT, null, 0, WIDTH);
  }

  private static double box(int[] argb) {
    return Times.median(4, () -> PictureReader.inkedBox(WIDTH, HEIGHT, argb));
  }

  private static int sum(int[] argb) {
    int sum = 0;
    for (int p : argb) {
      sum += p;
    }
    return sum;
  }
}
