package dev.placket.packs.compose;

import dev.placket.packs.refusal.PackSetting;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.fault.Fault;
import java.util.Locale;

/**
 * How large a pack may be before it is refused; counts, none of them time.
 *
 * @param sheets most sheets, further ones of tables and flats counted
 * @param rows most rows of a table
 * @param pixels most pixels of the previews of all sheets together
 * @param preview most pixels of one preview; a page that would have more is drawn with fewer pixels
 *     per inch
 */
public record PackLimits(int sheets, int rows, long pixels, long preview) {
  /**
   * 500 sheets, 20,000 rows, 2,000 million pixels: 500 sheets of A2, or 83 of A0 and larger. One
   * preview has at most 24 million: more than A0 has, and no more than a small heap takes.
   */
  public static final PackLimits DEFAULT = new PackLimits(500, 20_000, 2_000_000_000L, 24_000_000);

  /**
   * Refuses what comes to more sheets than the limit.
   *
   * @param what what messages call it
   */
  public void check(Object what, int count) throws Refusal {
    if (count > sheets) {
      throw Refusal.input(
          Fault.limit(what, "comes to " + count + " sheets, more than the limit of " + sheets)
              .remedy("split it")
              .remedy("raise the limit", PackSetting.MAXIMUM_SHEETS));
    }
  }

  /**
   * Refuses, before any is drawn, previews that come to more pixels than the limit.
   *
   * @param what what messages call the pack
   * @param count pixels of all previews
   */
  public void checkPixels(Object what, long count) throws Refusal {
    if (count > pixels) {
      throw Refusal.input(
          Fault.limit(
                  what,
                  String.format(
                      Locale.ROOT,
                      "its previews come to %.1f million pixels, more than the limit of %.1f million",
                      count / 1e6,
                      pixels / 1e6))
              .remedy("split it")
              .remedy("use smaller paper")
              .remedy("raise the limit", PackSetting.MAXIMUM_PIXELS));
    }
  }
}
