package dev.placket.benchmarks.reading;

import dev.placket.benchmarks.outside.Row;
import dev.placket.benchmarks.outside.Times;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;

/** Size, density and alpha from the header of a file of 2550 by 3300 pixels. */
public final class HeaderTimes {
  private static final int EACH = 400;

  private final Path work;
  private final Vips vips;

  /** Measures with files in a folder. */
  public HeaderTimes(Path work, Vips vips) {
    this.work = work;
    this.vips = vips;
  }

  /** One row for each format; without libvips only PNG, since it writes the others. */
  public List<Row> measure() throws IOException {
    Path png = work.resolve("page.png");
    ImageIO.write(LargePicture.drawing(2550, 3300, true), "png", png.toFile());
    List<Row> rows = new ArrayList<>();
    rows.add(row("header probe, PNG", png, 0.1));
    if (vips.installed()) {
      rows.add(row("header probe, TIFF", vips.convert(png, "page.tif", "compression=lzw"), 0.1));
      // Its JPEGs carry the density in Exif, too.
      rows.add(row("header probe, JPEG with Exif", vips.convert(png, "page.jpg"), 0.15));
    }
    return rows;
  }

  private Row row(String what, Path file, double aim) {
    PictureSource source = PictureSource.of(file);
    // The formats share code: all of it is warm before the first is measured.
    Times.median(EACH, () -> PictureReader.head(source, ReadLimits.DEFAULT));
    double here = Times.median(EACH, () -> PictureReader.head(source, ReadLimits.DEFAULT));
    return Row.time(what, here, vips.header(file), "libvips", aim);
  }
}
