package dev.placket.pictures.prepare;

import dev.placket.pictures.base.PictureException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.Deflater;

/**
 * How the rows of a PNG are packed: filtered or not, and what deflate looks for.
 *
 * @param filtered whether each row takes the filter that leaves the least differences
 * @param strategy of {@link Deflater}: {@code FILTERED} where short repeats say nothing
 */
record PngPacking(boolean filtered, int strategy) {
  static final PngPacking PLAIN = new PngPacking(false, Deflater.DEFAULT_STRATEGY);

  /** Bands of so many rows are packed on trial, one in so many. */
  private static final int BAND = 32;

  private static final int BANDS_APART = 4;

  /** Enough to tell ways of packing apart, in half the time of the level that is used. */
  private static final int TRIAL_LEVEL = 4;

  /** The one that packs a sample of the rows best. Reads all rows once. O(pixels). */
  static PngPacking best(PixelRows rows, PngKind kind) throws PictureException, IOException {
    List<PngPacking> all = candidates(kind);
    if (all.size() == 1) {
      return all.get(0);
    }
    long[] bytes = new long[all.size()];
    List<PixelData> trials = new ArrayList<>();
    try {
      for (int i = 0; i < bytes.length; i++) {
        int which = i;
        trials.add(new PixelData((b, n) -> bytes[which] += n, all.get(i).strategy(), TRIAL_LEVEL));
      }
      PngFilter filter = new PngFilter(kind.rowBytes(rows.width()), kind.channels);
      kind.read(
          rows,
          (y, row) -> {
            if (y / BAND % BANDS_APART == 0) {
              byte[] least = filter.least(row);
              for (int i = 0; i < bytes.length; i++) {
                trials.get(i).write(all.get(i).filtered() ? least : filter.none(row));
              }
            } else {
              filter.pass(row);
            }
          });
    } finally {
      for (PixelData trial : trials) {
        trial.close();
      }
    }
    int best = 0;
    for (int i = 1; i < bytes.length; i++) {
      best = bytes[i] < bytes[best] ? i : best;
    }
    return all.get(best);
  }

  /** Samples of less than a byte are never filtered; indices repeat as a whole even if they are. */
  private static List<PngPacking> candidates(PngKind kind) {
    if (kind.depth < 8) {
      return List.of(PLAIN);
    }
    PngPacking filtered = new PngPacking(true, Deflater.DEFAULT_STRATEGY);
    return kind.type == PngKind.PALETTE
        ? List.of(PLAIN, filtered)
        : List.of(PLAIN, filtered, new PngPacking(true, Deflater.FILTERED));
  }
}
