package dev.placket.packs.compose;

import dev.placket.packs.refusal.Refusal;

/**
 * How large a pack may be before it is refused; counts, none of them time.
 *
 * @param sheets most sheets, further ones of tables and flats counted
 * @param rows most rows of a table
 */
public record PackLimits(int sheets, int rows) {
  /** 500 sheets, 20,000 rows. */
  public static final PackLimits DEFAULT = new PackLimits(500, 20_000);

  /**
   * Refuses what comes to more sheets than the limit.
   *
   * @param what what messages call it
   */
  public void check(Object what, int count) throws Refusal {
    if (count > sheets) {
      throw Refusal.input(
          what
              + ": comes to "
              + count
              + " sheets, more than the limit of "
              + sheets
              + "; split it, or raise the limit with --most-sheets.");
    }
  }
}
