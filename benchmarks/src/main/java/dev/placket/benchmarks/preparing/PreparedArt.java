package dev.placket.benchmarks.preparing;

import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.base.ViewBox;
import dev.placket.pictures.prepare.PixelGrid;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** One flat drawn in outline, and the same with every white part in one of several colours. */
record PreparedArt(Path outline, Path coloured) {
  private static final Pattern WHITE = Pattern.compile("fill=\"#fff\"");
  private static final List<String> COLOURS =
      List.of("#b9643c", "#37567f", "#8a9a5b", "#d9c7a3", "#5b2a3c");

  /** Writes both into a folder. */
  static PreparedArt of(Path flat, Path work) throws IOException {
    String svg = Files.readString(flat, StandardCharsets.UTF_8);
    Iterator<String> colours = Stream.generate(COLOURS::stream).flatMap(s -> s).iterator();
    Path outline = Files.writeString(work.resolve("outline.svg"), svg);
    String filled = WHITE.matcher(svg).replaceAll(m -> "fill=\"" + colours.next() + "\"");
    return new PreparedArt(outline, Files.writeString(work.resolve("coloured.svg"), filled));
  }

  /** Reads one of them. */
  static Drawing read(Path svg) throws PictureException {
    return (Drawing) PictureReader.read(PictureSource.of(svg), ReadLimits.DEFAULT);
  }

  /** All of a drawing in so many pixels across. */
  static PixelGrid pixels(Drawing drawing, int width) {
    ViewBox v = drawing.viewBox();
    InkedBox all = new InkedBox(v.x(), v.y(), v.x() + v.width(), v.y() + v.height());
    return PixelGrid.of(drawing.render(width, all));
  }
}
