package dev.placket.packs.description;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads what goes onto a workbook. */
final class WorksheetNode {
  private static final List<String> WORKBOOK = List.of("file", "worksheets");
  private static final List<String> WORKSHEET =
      List.of("worksheet", "windows", "labelled", "flats");

  private final NodeValues values;
  private final FlatReader flats;

  WorksheetNode(NodeValues values) {
    this.values = values;
    this.flats = new FlatReader(values);
  }

  @Nullable PackWorkbook workbook(@Nullable PackNode node) {
    if (node == null) {
      return null;
    }
    Entries e = new Entries(node, "the workbook", WORKBOOK, values.faults());
    return new PackWorkbook(
        values.text(e.need("file"), ""),
        values.named(e.need("worksheets"), "a worksheet", this::worksheet));
  }

  /** A worksheet is called by its identifier where it has no other name. */
  private PackWorksheet worksheet(String id, PackNode node) {
    Entries e = new Entries(node, "worksheet " + id, WORKSHEET, values.faults());
    return new PackWorksheet(
        values.text(e.get("worksheet"), id),
        values.oneOrMore(e.get("windows"), "ranges, as in B5:H30, or defined names"),
        values.oneOrMore(e.get("labelled"), "ranges, as in B5:H30, or defined names"),
        values.named(e.need("flats"), "a flat", flats::flat));
  }
}
