package dev.placket.packs.report;

import dev.placket.packs.placed.PackWeight;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The findings of a run, for the report on the terminal and the report page.
 *
 * @param title what was laid out
 * @param source the folder or description that was read
 * @param read notes on the input
 * @param unnamed files whose names give no role
 * @param sheets the result of each sheet
 * @param closing notes on the whole pack
 * @param weight the size of the file; null where it has no limit
 */
public record Findings(
    String title,
    Path source,
    List<String> read,
    List<String> unnamed,
    List<SheetResult> sheets,
    List<String> closing,
    @Nullable PackWeight weight) {
  /** The smallest share that the report mentions. */
  public static final double LEAST_SHOWN = 0.0005;

  /** Copies the lists. */
  public Findings {
    read = List.copyOf(read);
    unnamed = List.copyOf(unnamed);
    sheets = List.copyOf(sheets);
    closing = List.copyOf(closing);
  }
}
