package dev.placket.packs.compose;

import dev.placket.layout.units.Rect;
import dev.placket.packs.description.PackSheet;
import dev.placket.packs.page.SheetTexts;
import dev.placket.packs.table.TablePiece;
import dev.placket.packs.table.TableText;
import dev.placket.packs.text.LanguageMarks;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A sheet of the description with its tables in pieces, so that it is known how many sheets it
 * becomes.
 *
 * @param id its identifier
 * @param sheet its description
 * @param frame its rectangles
 * @param first the pieces that lie in its areas, by area
 * @param further pieces that each need a sheet of their own, with their area's name
 * @param rowFlats flats for which a row of a table, on whatever page, has a window
 * @param texts what its tables say
 * @param flowing sheets beyond those onto which flats go on
 */
record SheetPlan(
    String id,
    PackSheet sheet,
    SheetFrame frame,
    Map<String, TablePiece> first,
    List<Map.Entry<String, TablePiece>> further,
    Set<String> rowFlats,
    Map<String, SheetTexts.Table> texts,
    int flowing) {

  static SheetPlan of(
      String id, PackSheet sheet, SheetFrame frame, SheetTables tables, MarkedRows marks) {
    Map<String, TablePiece> first = new LinkedHashMap<>();
    List<Map.Entry<String, TablePiece>> further = new ArrayList<>();
    Map<String, SheetTexts.Table> texts = new LinkedHashMap<>();
    sheet
        .tables()
        .forEach(
            (name, said) -> {
              String path = "sheets/" + id + "/tables/" + name;
              Rect area = frame.body().areas().get(name);
              SheetTables.SetTable set = tables.set(said, path, area == null ? 0 : area.width());
              if (set != null) {
                marks.check(set.filled().table(), path);
              }
              if (area == null || set == null) {
                return;
              }
              FilledTable filled = set.filled();
              TableText text = set.text();
              // Tables of revisions are no content of the sheet: fit.json has them as its history.
              if (said.revisions() == null) {
                texts.put(name, plain(text));
              }
              List<TablePiece> pieces =
                  tables.pieces(text, filled.table(), name, area, frame.between(), path);
              for (int i = 0; i < pieces.size(); i++) {
                if (i == 0) {
                  first.put(name, pieces.get(0));
                } else {
                  further.add(Map.entry(name, pieces.get(i)));
                }
              }
            });
    marks.checkCallouts();
    Set<String> rowFlats = new HashSet<>();
    Stream.concat(first.values().stream(), further.stream().map(Map.Entry::getValue))
        .forEach(p -> p.windows().forEach(w -> rowFlats.add(w.flat())));
    return new SheetPlan(id, sheet, frame, first, further, rowFlats, texts, 0);
  }

  /** Without the marks of languages. */
  private static SheetTexts.Table plain(TableText text) {
    return new SheetTexts.Table(
        text.columns().stream().map(c -> LanguageMarks.without(c.heading())).toList(),
        text.rows().stream()
            .map(row -> row.stream().map(LanguageMarks::without).toList())
            .toList());
  }

  /** How many sheets it becomes. */
  int pages() {
    return 1 + further.size() + flowing;
  }

  /** The same with sheets onto which flats go on. */
  SheetPlan flowing(int more) {
    return new SheetPlan(id, sheet, frame, first, further, rowFlats, texts, more);
  }

  /** Whether a page is ruled as the first is. */
  boolean likeFirst(int page) {
    return page == 0 || page > further.size();
  }

  /** Whether a row of a table, on whatever page, has a window for a flat. */
  boolean hasRowFor(String flat) {
    return rowFlats.contains(flat);
  }
}
