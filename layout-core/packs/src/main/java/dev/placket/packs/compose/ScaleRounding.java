package dev.placket.packs.compose;

import dev.placket.layout.flat.Role;
import dev.placket.packs.description.Pack;
import dev.placket.packs.description.PackFlat;
import dev.placket.packs.description.PackRounding;
import dev.placket.packs.flats.ScaleLine;
import dev.placket.packs.flats.ScaleSeries;
import org.jspecify.annotations.Nullable;

/** Round scales as a description asks for them. */
final class ScaleRounding {
  private ScaleRounding() {}

  /** The scales that count as round; null where none are asked for. */
  static @Nullable ScaleSeries of(Pack pack) {
    PackRounding said = pack.rounding();
    return said == null
        ? null
        : new ScaleSeries(said.series().isEmpty() ? ScaleSeries.USUAL : said.series(), said.most());
  }

  /**
   * The line on the scale of a flat: no figure under photographs, steps and coloured drawings,
   * which nobody measures, and with round scales a figure only where it is round.
   */
  static @Nullable ScaleLine line(Pack pack, PackFlat flat, @Nullable ScaleLine line) {
    if (line == null) {
      return null;
    }
    if (!flat.trueSize() && isOnlySeen(flat)) {
      return line.withoutFigure();
    }
    ScaleSeries scales = of(pack);
    return scales == null ? line : line.onlyRound(scales);
  }

  private static boolean isOnlySeen(PackFlat flat) {
    return flat.role() == Role.PHOTO
        || flat.role() == Role.STEP
        || !flat.colouring().fills().isEmpty();
  }
}
