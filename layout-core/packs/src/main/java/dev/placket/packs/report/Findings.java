package dev.placket.packs.report;

import dev.placket.packs.placed.PackWeight;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a run found out: the report and the report page say it, each in its own way.
 *
 * @param title what was laid out
 * @param source the folder or description that was read
 * @param read what is to be known of what was read
 * @param unnamed names of files whose names say no role
 * @param sheets what came of each sheet
 * @param closing what is to be known of the whole
 * @param weight what the file weighs; null where it keeps none
 */
public record Findings(
    String title,
    Path source,
    List<String> read,
    List<String> unnamed,
    List<SheetResult> sheets,
    List<String> closing,
    @Nullable PackWeight weight) {
  /** A share under this is not worth a word. */
  public static final double LEAST_SHOWN = 0.0005;

  /** Copies the lists. */
  public Findings {
    read = List.copyOf(read);
    unnamed = List.copyOf(unnamed);
    sheets = List.copyOf(sheets);
    closing = List.copyOf(closing);
  }
}
