package dev.placket.packs.description;

import dev.placket.layout.units.Length;
import dev.placket.packs.text.Lettering;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A table.
 *
 * @param columns its columns; none where a CSV file's first record says them
 * @param rows its values, as many in each row as there are columns; none where a CSV file has them
 * @param csv a file of comma-separated values beside the description, or null
 * @param measures codes of the points of measure that it lists, or {@code all}; none where it has
 *     columns and rows, or a file, of its own
 * @param check what it lists of the sample of its sheet; null where it is another table
 * @param colourways codes of the colourways whose colours it lists, or {@code all}; none where it
 *     is another table
 * @param materials numbers of the materials that it lists, or {@code all}; none where it is another
 *     table
 * @param revisions what it lists of the revisions of the pack; null where it is another table
 * @param sample the heading of the column of the sample size, which is set strong; blank for none
 * @param size the height of capitals of its values
 * @param least the height of capitals down to which they may shrink
 * @param windowRow the height of rows that hold a window
 */
public record PackTable(
    List<PackColumn> columns,
    List<List<Words>> rows,
    @Nullable String csv,
    List<String> measures,
    @Nullable CheckPart check,
    List<String> colourways,
    List<String> materials,
    @Nullable RevisionPart revisions,
    String sample,
    Length size,
    Length least,
    Length windowRow) {
  /** The height of rows with a window where none is stated. */
  public static final Length USUAL_WINDOW_ROW = Length.mm(20);

  /** Copies the lists. */
  public PackTable {
    columns = List.copyOf(columns);
    measures = List.copyOf(measures);
    colourways = List.copyOf(colourways);
    materials = List.copyOf(materials);
    rows = rows.stream().map(List::copyOf).toList();
  }

  /** A table of usual lettering. */
  public static PackTable of(List<PackColumn> columns, List<List<Words>> rows) {
    return new PackTable(
        columns,
        rows,
        null,
        List.of(),
        null,
        List.of(),
        List.of(),
        null,
        "",
        Lettering.VALUE,
        Lettering.CAPTION,
        USUAL_WINDOW_ROW);
  }

  /** This table with a sample size, where it states none. */
  public PackTable sampled(String size) {
    return new PackTable(
        columns,
        rows,
        csv,
        measures,
        check,
        colourways,
        materials,
        revisions,
        sample.isBlank() ? size : sample,
        this.size,
        least,
        windowRow);
  }

  /** This table with columns and rows that were read from its file. */
  public PackTable with(List<PackColumn> read, List<List<Words>> values) {
    return new PackTable(
        read,
        values,
        csv,
        measures,
        check,
        colourways,
        materials,
        revisions,
        sample,
        size,
        least,
        windowRow);
  }

  /** Whether its columns and rows come from another part of the description. */
  boolean made() {
    return !measures.isEmpty()
        || check != null
        || !colourways.isEmpty()
        || !materials.isEmpty()
        || revisions != null;
  }
}
