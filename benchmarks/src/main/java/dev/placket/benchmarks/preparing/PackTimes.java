package dev.placket.benchmarks.preparing;

import dev.placket.benchmarks.outside.OutsideProgram;
import dev.placket.benchmarks.outside.Row;
import dev.placket.benchmarks.outside.Times;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.prepare.PaletteRows;
import dev.placket.pictures.prepare.PixelGrid;
import dev.placket.pictures.prepare.PixelRows;
import dev.placket.pictures.prepare.PngWriter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;

/** Bytes and times of PNGs, without loss and with few colours. */
final class PackTimes {
  private static final int WIDTH = 1840;
  private static final int RUNS = 3;
  private static final double UNSEEN = 60;

  private final Path work;

  PackTimes(Path work) {
    this.work = work;
  }

  List<String> measure(PreparedArt art) throws PictureException, IOException {
    List<String> lines = new ArrayList<>();
    lines.addAll(measure("outline", PreparedArt.pixels(PreparedArt.read(art.outline()), WIDTH)));
    lines.addAll(measure("coloured", PreparedArt.pixels(PreparedArt.read(art.coloured()), WIDTH)));
    return lines;
  }

  private List<String> measure(String name, PixelGrid grid) throws PictureException, IOException {
    Path png = work.resolve(name + ".png");
    ImageIO.write(grid.toImage(), "png", png.toFile());
    List<String> lines = new ArrayList<>(withoutLoss(name, grid, png));
    lines.addAll(fewColours(name, grid, png));
    return lines;
  }

  private List<String> withoutLoss(String name, PixelGrid grid, Path png)
      throws PictureException, IOException {
    Double bytes = null;
    Double time = null;
    if (OutsideProgram.installed("optipng")) {
      Path packed = work.resolve(name + "-packed.png");
      List<String> command =
          List.of("optipng", "-q", "-o2", "-clobber", "-out", packed.toString(), png.toString());
      time = OutsideProgram.median(RUNS, command);
      bytes = (double) Files.size(packed);
    }
    double here = Times.ofLong(() -> PngWriter.encode(grid, null));
    int length = PngWriter.encode(grid, null).length;
    return List.of(
        Row.bytes(name + ", without loss", length, bytes, "optipng -o2", 1.1).line(),
        Row.time("the same", here, time, "optipng -o2", 0.1).line());
  }

  private List<String> fewColours(String name, PixelGrid grid, Path png)
      throws PictureException, IOException {
    Double bytes = null;
    Double time = null;
    String likeness = "";
    if (OutsideProgram.installed("pngquant")) {
      Path packed = work.resolve(name + "-few.png");
      List<String> command =
          List.of("pngquant", "--force", "--output", packed.toString(), png.toString());
      time = OutsideProgram.median(RUNS, command);
      bytes = (double) Files.size(packed);
      likeness =
          String.format(", at %.1f dB", PictureLikeness.of(grid, PictureLikeness.read(packed)));
    }
    byte[] ours = few(grid);
    double here = Times.ofLong(() -> few(grid));
    List<String> lines = new ArrayList<>();
    String against = "pngquant" + likeness;
    lines.add(Row.bytes(name + ", few colours", ours.length, bytes, against, 1).line());
    lines.add(Row.time("the same", here, time, "pngquant", 0.3).line());
    @Nullable PixelRows exchanged = PaletteRows.of(grid);
    if (exchanged != null) {
      lines.add(
          Row.likeness(
              "the same, beside all colours", PictureLikeness.of(grid, exchanged), UNSEEN));
    }
    return lines;
  }

  private static byte[] few(PixelGrid grid) throws PictureException, IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PngWriter.writeFewColours(grid, null, out);
    return out.toByteArray();
  }
}
