package dev.placket.packs.table;

import dev.placket.layout.sheet.GridTrack;
import dev.placket.layout.units.Length;
import dev.placket.packs.description.PackColumn.Align;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A table with its text as it is set: languages joined, fields filled in.
 *
 * @param columns its columns
 * @param rows its values; as many in each row as there are columns
 * @param reversed the values that are set in white on black
 * @param steps heights of capitals to try for the values, the preferred first
 * @param windowRow the height of rows that hold a window
 */
public record TableText(
    List<Column> columns,
    List<List<String>> rows,
    Set<At> reversed,
    List<Length> steps,
    Length windowRow) {
  /**
   * Where a value stands.
   *
   * @param row from 0, headings left out
   * @param column from 0
   */
  public record At(int row, int column) {}

  /**
   * A column.
   *
   * @param heading what stands above it
   * @param width its stated width, or null
   * @param align its stated alignment, or null
   * @param windows whether its values name flats
   * @param strong whether it is the sample size's
   */
  public record Column(
      String heading,
      @Nullable GridTrack width,
      @Nullable Align align,
      boolean windows,
      boolean strong) {}

  /** Copies the lists. */
  public TableText {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
    reversed = Set.copyOf(reversed);
    steps = List.copyOf(steps);
  }

  /** The values of a column that hold something. */
  List<String> values(int column) {
    return rows.stream().map(r -> r.get(column)).filter(v -> !v.isBlank()).toList();
  }
}
