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
 */
public record PackWeight(long limit, long bytes, @Nullable Lowered lowered, List<Heavy> heaviest) {
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

  /** Copies the list. */
  public PackWeight {
    heaviest = List.copyOf(heaviest);
  }

  /** By how many bytes the limit is not kept; 0 where it is. */
  public long over() {
    return Math.max(0, bytes - limit);
  }
}
