package dev.placket.benchmarks.preparing;

import dev.placket.pictures.base.PictureException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** All lines of the table. */
public final class PreparingTimes {
  private PreparingTimes() {}

  /**
   * Measures with one flat.
   *
   * @param work takes files
   * @throws PictureException if the flat cannot be read
   */
  public static List<String> measure(Path flat, Path work) throws PictureException, IOException {
    PreparedArt art = PreparedArt.of(flat, work);
    List<String> lines = new ArrayList<>();
    lines.addAll(ResampleTimes.measure(art, work));
    lines.addAll(RasteriseTimes.measure(art, work));
    lines.addAll(new PackTimes(work).measure(art));
    return lines;
  }
}
