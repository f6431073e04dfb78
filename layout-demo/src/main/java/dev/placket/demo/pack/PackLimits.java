package dev.placket.demo.pack;

/**
 * How large a pack may be before it is refused; counts, none of them time.
 *
 * @param sheets most sheets, further ones of tables and flats counted
 * @param rows most rows of a table
 */
public record PackLimits(int sheets, int rows) {
  /** 500 sheets, 20,000 rows. */
  public static final PackLimits DEFAULT = new PackLimits(500, 20_000);
}
