package dev.placket.benchmarks.preparing;

import dev.placket.benchmarks.outside.OutsideProgram;
import dev.placket.benchmarks.outside.Row;
import dev.placket.benchmarks.outside.Times;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.prepare.AreaRows;
import dev.placket.pictures.prepare.PixelGrid;
import dev.placket.pictures.prepare.PngWriter;
import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.ImageTranscoder;
import org.apache.batik.transcoder.image.PNGTranscoder;

/** From the bytes of an SVG to those of a PNG of 1700 pixels across. */
final class RasteriseTimes {
  private static final int WIDTH = 1840;
  private static final int FINER = 4;
  private static final int RUNS = 7;
  private static final double AIM = 0.25;
  private static final double LEAST_LIKENESS = 41;

  private RasteriseTimes() {}

  static List<String> measure(PreparedArt art, Path work) throws PictureException {
    List<String> lines = new ArrayList<>();
    Path svg = art.outline();
    double here =
        Times.ofLong(
            () -> PngWriter.encode(PreparedArt.pixels(PreparedArt.read(svg), WIDTH), null));
    double batik = Times.ofLong(() -> transcoded(svg));
    String what = "SVG to a PNG " + WIDTH + " across";
    lines.add(Row.time(what, here, batik, "Batik's transcoder", AIM).line());
    if (OutsideProgram.installed("rsvg-convert")) {
      List<String> command =
          List.of(
              "rsvg-convert",
              "--width",
              Integer.toString(WIDTH),
              "--output",
              work.resolve("rsvg.png").toString(),
              svg.toString());
      double all =
          OutsideProgram.median(RUNS, command)
              - OutsideProgram.median(RUNS, List.of("rsvg-convert", "-v"));
      lines.add(Row.time("the same", here, all, "librsvg", Double.POSITIVE_INFINITY).line());
    }
    PixelGrid fine = PreparedArt.pixels(PreparedArt.read(svg), FINER * WIDTH);
    PixelGrid drawn = PreparedArt.pixels(PreparedArt.read(svg), WIDTH);
    double likeness = PictureLikeness.of(drawn, new AreaRows(fine, drawn.width(), drawn.height()));
    lines.add(
        Row.likeness("the same, beside one drawn four times finer", likeness, LEAST_LIKENESS));
    return lines;
  }

  private static byte[] transcoded(Path svg) throws TranscoderException {
    PNGTranscoder transcoder = new PNGTranscoder();
    transcoder.addTranscodingHint(ImageTranscoder.KEY_WIDTH, (float) WIDTH);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    transcoder.transcode(new TranscoderInput(svg.toUri().toString()), new TranscoderOutput(out));
    return out.toByteArray();
  }
}
