package dev.placket.packs.compose;

import dev.placket.packs.flats.ScaleSeries;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A pack whose sheets are ruled and lettered, before anything is placed.
 *
 * @param title what a reader of the PDF shows as its name
 * @param fileName what its files are called
 * @param fields the fields as they were stated, the leading language of each
 * @param sheets the sheets in order
 * @param oneScale scale groups that have one scale on all sheets
 * @param rounding round scales; null for the largest
 * @param notes what the writer of the description should know
 */
public record ComposedPack(
    String title,
    String fileName,
    Map<String, String> fields,
    List<ComposedSheet> sheets,
    List<String> oneScale,
    @Nullable ScaleSeries rounding,
    List<String> notes) {
  /** Copies the lists. */
  public ComposedPack {
    sheets = List.copyOf(sheets);
    notes = List.copyOf(notes);
  }
}
