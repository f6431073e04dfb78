package dev.placket.benchmarks.rasters;

import dev.placket.benchmarks.rasters.Judgement.Verdict;
import dev.placket.layout.density.PixelSize;
import dev.placket.pictures.Picture;
import dev.placket.pictures.PictureProbe;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.RasterPicture;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;

/** Judges our decoding of a file by that of second libraries. */
final class Judging {
  private final SecondLibraries others;

  Judging(SecondLibraries others) {
    this.others = others;
  }

  Judgement judge(Path file) throws IOException {
    String name = file.getFileName().toString();
    Argb ours;
    List<String> notes;
    try {
      Picture picture = PictureReader.read(PictureSource.of(file), ReadLimits.DEFAULT);
      if (!(picture instanceof RasterPicture raster)) {
        return new Judgement(name, Verdict.REFUSED, "", 0, 0, "a drawing");
      }
      ours = pixels(raster.image());
      notes =
          raster.notes().stream()
              .filter(PictureNote::changesPicture)
              .map(PictureNote::text)
              .toList();
    } catch (PictureException e) {
      String words =
          String.valueOf(e.getMessage()).replace(file.toString(), "").replaceFirst("^[:,] ", "");
      return new Judgement(name, Verdict.REFUSED, "", 0, 0, words);
    } catch (RuntimeException | Error e) {
      return new Judgement(name, Verdict.CRASHED, "", 0, 0, e.toString());
    }
    if (ours.width() != stored(file).width() || ours.height() != stored(file).height()) {
      String words = "its pixels are not square; made square, it has another size";
      return new Judgement(name, Verdict.ALONE, "", 0, 0, words);
    }
    return compared(file, name, ours, String.join("; ", notes));
  }

  private static PixelSize stored(Path file) {
    try {
      PictureProbe probe = PictureReader.probe(PictureSource.of(file), ReadLimits.DEFAULT);
      return Objects.requireNonNull(probe.pixels());
    } catch (PictureException e) {
      throw new IllegalStateException("was read before", e);
    }
  }

  private Judgement compared(Path file, String name, Argb ours, String words) throws IOException {
    int limit = others.bits(file) > 8 || others.profiled(file) ? 2 : 1;
    Judgement nearest = new Judgement(name, Verdict.ALONE, "", 0, 0, words);
    for (SecondLibraries.Way way : others.ways(file)) {
      Argb theirs = others.decoded(way);
      if (theirs == null) {
        continue;
      }
      Argb.Apart apart = ours.apart(theirs);
      boolean right = apart.mean() <= limit && apart.largest() <= limit;
      Verdict verdict = right ? Verdict.RIGHT : words.isEmpty() ? Verdict.WRONG : Verdict.NOTED;
      if (right || nearest.against().isEmpty() || apart.mean() < nearest.mean()) {
        nearest = new Judgement(name, verdict, way.name(), apart.mean(), apart.largest(), words);
      }
      if (right) {
        break;
      }
    }
    return nearest;
  }

  private static Argb pixels(BufferedImage image) {
    int w = image.getWidth();
    int h = image.getHeight();
    return new Argb(w, h, image.getRGB(0, 0, w, h, null, 0, w));
  }
}
