package dev.placket.benchmarks.preparing;

import dev.placket.benchmarks.outside.OutsideProgram;
import dev.placket.benchmarks.outside.Row;
import dev.placket.benchmarks.outside.Times;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.prepare.AreaRows;
import dev.placket.pictures.prepare.PixelGrid;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;

/** A drawing of 5100 pixels across averaged down to 1700, beside libvips on one thread. */
final class ResampleTimes {
  private static final int FROM = 5520;
  private static final int TO = 1840;
  private static final int RUNS = 7;
  private static final double AIM = 0.5;
  private static final double LEAST_LIKENESS = 60;

  private ResampleTimes() {}

  static List<String> measure(PreparedArt art, Path work) throws PictureException, IOException {
    PixelGrid large = PreparedArt.pixels(PreparedArt.read(art.coloured()), FROM);
    int height = (int) Math.round(large.height() * (double) TO / FROM);
    AreaRows rows = new AreaRows(large, TO, height);
    double here = Times.ofLong(() -> PixelGrid.of(rows));
    Row time =
        Row.time(
            "area averaging, " + FROM + " to " + TO + " across",
            here,
            vips(large, work),
            "libvips lanczos3, one thread",
            AIM);
    double likeness = ExactMean.likeness(large, PixelGrid.of(rows));
    return List.of(
        time.line(), Row.likeness("the same, beside the exact mean", likeness, LEAST_LIKENESS));
  }

  /** In its own format, mapped into memory, less the time for writing the result alone. */
  private static @Nullable Double vips(PixelGrid large, Path work) throws IOException {
    if (!OutsideProgram.installed("vips")) {
      return null;
    }
    Path png = work.resolve("large.png");
    ImageIO.write(large.toImage(), "png", png.toFile());
    String mapped = work.resolve("large.v").toString();
    OutsideProgram.run(List.of("vips", "copy", png.toString(), mapped));
    String small = work.resolve("small.v").toString();
    String scale = Double.toString((double) TO / FROM);
    List<String> resize =
        List.of(
            "vips", "--vips-concurrency=1", "resize", mapped, small, scale, "--kernel", "lanczos3");
    double all = OutsideProgram.median(RUNS, resize);
    return all
        - OutsideProgram.median(
            RUNS, List.of("vips", "--vips-concurrency=1", "copy", small, small + "2.v"));
  }
}
