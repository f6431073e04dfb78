package dev.placket.packs.compose;

import dev.placket.packs.description.Described;
import dev.placket.packs.description.Pack;
import dev.placket.packs.description.PackColouring;
import dev.placket.packs.description.PackColourways;
import dev.placket.packs.description.PackFlat;
import dev.placket.packs.description.PackSheet;
import dev.placket.packs.description.PackSpots;
import dev.placket.packs.description.PackWorkbook;
import dev.placket.packs.description.PackWorksheet;
import dev.placket.packs.description.Places;
import dev.placket.packs.description.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Puts a flat that is shown in several colourways onto its sheet once in each, filled and captioned
 * by the table of colourways.
 *
 * <p>A part may name areas of several drawings; each drawing takes those it has. An area that no
 * drawing has is a slip, and so is a drawing that has none.
 */
final class ColourwayFlats {
  private final Described described;
  private final FlatFiles files;
  private final @Nullable ColourBook book;
  private final List<String> notes;
  private final Set<String> shown = new LinkedHashSet<>();
  private final Set<String> names = new LinkedHashSet<>();
  private Places places;

  private ColourwayFlats(
      Described described, FlatFiles files, @Nullable ColourBook book, List<String> notes) {
    this.described = described;
    this.files = files;
    this.book = book;
    this.notes = notes;
    this.places = described.places();
  }

  /**
   * The description with a flat for each colourway; slips are noted.
   *
   * @param book the colourways; null for none
   * @param notes takes notes for the report
   */
  static Described placed(
      Described described, FlatFiles files, @Nullable ColourBook book, List<String> notes) {
    return new ColourwayFlats(described, files, book, notes).placed();
  }

  private Described placed() {
    Pack pack = described.pack();
    Map<String, PackSheet> sheets = new LinkedHashMap<>();
    pack.sheets()
        .forEach((id, sheet) -> sheets.put(id, sheet.with(all(sheet.flats(), "sheets/" + id))));
    PackWorkbook workbook = pack.workbook();
    Pack placed = pack.with(sheets);
    if (workbook != null) {
      Map<String, PackWorksheet> worksheets = new LinkedHashMap<>();
      workbook
          .worksheets()
          .forEach(
              (id, w) -> worksheets.put(id, w.with(all(w.flats(), "workbook/worksheets/" + id))));
      placed = placed.with(new PackWorkbook(workbook.file(), worksheets));
    }
    checkAreas();
    return new Described(described.file(), placed, places, described.faults());
  }

  private Map<String, PackFlat> all(Map<String, PackFlat> flats, String at) {
    Map<String, PackFlat> all = new LinkedHashMap<>();
    flats.forEach(
        (id, flat) -> {
          String path = at + "/flats/" + id;
          if (flat.colouring().colourways().isEmpty()) {
            all.put(id, flat);
          } else if (book == null) {
            add(path, "a flat in colourways, in a pack without them", "the key colourways");
          } else {
            ways(id, flat, path, book).forEach(all::put);
          }
        });
    return all;
  }

  private Map<String, PackFlat> ways(String id, PackFlat flat, String path, ColourBook colours) {
    Map<String, PackFlat> ways = new LinkedHashMap<>();
    if (!flat.spots().equals(PackSpots.NONE) || flat.held().any()) {
      add(
          path,
          "a flat in colourways with points, callouts, dimensions or held",
          "those on a flat of its own");
      return ways;
    }
    Set<String> known = files.parts(flat, path);
    if (known.isEmpty()) {
      return ways;
    }
    names.addAll(known);
    noteLacking(id, known, colours);
    boolean coloured = false;
    for (String code : colours.asked(flat.colouring().colourways(), path + "/colourways")) {
      String its = id + "-" + code;
      PackFlat way = way(flat, code, known, colours);
      coloured |= !way.colouring().fills().isEmpty();
      ways.put(its, way);
      places = places.also(path.substring(0, path.length() - id.length()) + its, path);
      shown.add(code);
    }
    if (!coloured && !ways.isEmpty()) {
      add(
          path,
          "a drawing in colourways of which no area takes a colour",
          "the names of its areas under fills of a part");
    }
    return ways;
  }

  /** A part that fills areas elsewhere stays as drawn here, which may be a slip in a name. */
  private void noteLacking(String id, Set<String> known, ColourBook colours) {
    List<String> lacking = new ArrayList<>();
    colours
        .parts()
        .forEach(
            (name, part) -> {
              if (!part.fills().isEmpty() && part.fills().stream().noneMatch(known::contains)) {
                lacking.add(name);
              }
            });
    if (!lacking.isEmpty()) {
      notes.add(
          "colourways: the drawing of "
              + id
              + " has no area of the part "
              + String.join(", ", lacking)
              + ".");
    }
  }

  private PackFlat way(PackFlat flat, String code, Set<String> known, ColourBook colours) {
    Map<String, String> fills = new LinkedHashMap<>();
    Map<String, List<String>> lines = new LinkedHashMap<>();
    List<String> hidden = new ArrayList<>(flat.hidden());
    for (PackColourways.Part part : colours.parts().values()) {
      List<String> areas = part.fills().stream().filter(known::contains).toList();
      List<String> groups = part.lines().keySet().stream().filter(known::contains).toList();
      if (colours.lacks(part, code)) {
        hidden.addAll(areas);
        hidden.addAll(groups);
        continue;
      }
      String screen = areas.isEmpty() ? null : colours.screen(part, code, notes);
      if (screen != null) {
        areas.forEach(area -> fills.put(area, screen));
      }
      for (String group : groups) {
        List<String> on = part.lines().getOrDefault(group, List.of());
        // Without areas of their own, lines lie on those of their part.
        lines.put(group, on.isEmpty() ? areas : on);
      }
    }
    // What a group lies on, without areas that this drawing or this colourway lacks.
    lines.replaceAll(
        (group, on) ->
            on.stream()
                .filter(a -> fills.containsKey(a) || a.equals(PackColouring.PAPER))
                .toList());
    Words caption = flat.caption();
    Words title = colours.title(code);
    return flat.with(
        flat.colouring().in(fills, lines),
        caption == null || caption.blank()
            ? title
            : Joined.of(", ", List.of(caption, title), described.pack().languages()),
        hidden);
  }

  /** An area of the table that no drawing has, and a colourway that none is shown in. */
  private void checkAreas() {
    if (book == null || shown.isEmpty()) {
      return;
    }
    book.parts()
        .forEach(
            (name, part) -> {
              List<String> all = new ArrayList<>(part.fills());
              all.addAll(part.lines().keySet());
              for (String each : all) {
                if (!names.contains(each)) {
                  described
                      .faults()
                      .unknown(
                          described.places().of("colourways/parts/" + name),
                          "no part of a drawing named",
                          each,
                          names);
                }
              }
            });
    List<String> missing =
        book.asked(List.of(PackColouring.ALL), "colourways").stream()
            .filter(code -> !shown.contains(code))
            .toList();
    if (!missing.isEmpty()) {
      notes.add("colourways: no drawing shows " + String.join(", ", missing) + ".");
    }
  }

  private void add(String path, String found, String expected) {
    described.faults().add(described.places().of(path + "/colourways"), found, expected);
  }
}
