package dev.placket.packs.placed;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a pack weighs.
 *
 * @param limit the most bytes that its file may have
 * @param bytes the bytes that it has
 * @param lowered what densities were lowered for it; null where it held without
 * @param heaviest its pictures, the heaviest first; empty where the limit holds
 * @param parts the files that it is split into; none where it is under the limit as a whole
 */
public record PackWeight(
    long limit, long bytes, @Nullable Lowered lowered, List<Heavy> heaviest, List<Part> parts) {
  /**
   * Densities lowered for the weight.
   *
   * @param perInch the most pixels per printed inch that any picture got
   * @param foreseen bytes of the file as they were reckoned before it was written so
   */
  public record Lowered(double perInch, long foreseen) {}

  /**
   * A picture that weighs much.
   *
   * @param name its file
   * @param bytes what it takes in the pack
   */
  public record Heavy(String name, long bytes) {}

  /**
   * A file with some of the sheets.
   *
   * @param name its name
   * @param bytes its size
   * @param first the number of its first sheet
   * @param last that of its last
   */
  public record Part(String name, long bytes, int first, int last) {}

  /** Copies the lists. */
  public PackWeight {
    heaviest = List.copyOf(heaviest);
    parts = List.copyOf(parts);
  }

  /** The same in parts. */
  public PackWeight with(List<Part> files) {
    return new PackWeight(limit, bytes, lowered, heaviest, files);
  }

  /** Whether no file that can be mailed has all of it: a single sheet is over the limit. */
  public boolean isOver() {
    return parts.isEmpty() ? over() > 0 : parts.stream().anyMatch(p -> p.bytes() > limit);
  }

  /** By how many bytes the whole file is over the limit; 0 where it is not. */
  public long over() {
    return Math.max(0, bytes - limit);
  }
}
