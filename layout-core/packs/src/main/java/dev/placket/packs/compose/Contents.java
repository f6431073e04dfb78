package dev.placket.packs.compose;

import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackBand;
import dev.placket.packs.description.PackCell;
import dev.placket.packs.description.PackFlat;
import dev.placket.packs.description.PackSamples;
import dev.placket.packs.description.PackSheet;
import dev.placket.packs.description.PackSpots;
import dev.placket.packs.description.PackWorkbook;
import dev.placket.packs.description.TextPosition;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Checks what a description says against itself, before anything is laid. */
final class Contents {
  private final Described described;
  private final FlatFiles files;
  private final PackText text;

  private Contents(Described described, FlatFiles files, PackText text) {
    this.described = described;
    this.files = files;
    this.text = text;
  }

  static void check(Described described, FlatFiles files, PackText text) {
    Contents contents = new Contents(described, files, text);
    contents.identifiers();
    contents.band(described.pack().header(), "header");
    contents.band(described.pack().foot(), "foot");
    PackWorkbook workbook = described.pack().workbook();
    if (workbook == null && described.pack().sheets().isEmpty()) {
      contents.add("sheets", "no sheet", "one sheet or more");
    }
    for (String reserved : PackText.OF_SHEET) {
      if (described.pack().fields().containsKey(reserved)) {
        contents.add(
            "fields/" + reserved,
            "the field '" + reserved + "'",
            "another name: every sheet fills this one itself");
      }
    }
    described.pack().sheets().forEach(contents::sheet);
    described.pack().sheets().forEach(contents::check);
    contents.oneScale();
    if (workbook != null) {
      contents.workbook(workbook);
    }
  }

  /** The sample that a sheet shows. */
  private void check(String id, PackSheet sheet) {
    String path = "sheets/" + id;
    String check = sheet.check();
    PackSamples samples = described.pack().samples();
    Set<String> known = samples == null ? Set.of() : samples.checks().keySet();
    if (check != null && !known.contains(check)) {
      TextPosition at = described.places().of(path + "/check");
      described.faults().unknown(at, "no sample under checks named", check, known);
    }
    if (check == null && !sheet.photographs().isEmpty()) {
      add(path + "/photographs", "photographs on a sheet without check", "the sheet's key check");
    }
    for (String window : sheet.photographs()) {
      if (!sheet.windows().containsKey(window)) {
        TextPosition at = described.places().of(path + "/photographs");
        described.faults().unknown(at, "the window", window, sheet.windows().keySet());
      }
    }
  }

  private void oneScale() {
    Set<String> groups = new LinkedHashSet<>();
    for (PackSheet sheet : described.pack().sheets().values()) {
      for (PackFlat flat : sheet.flats().values()) {
        String group = flat.scaling().group();
        if (group != null) {
          groups.add(group);
        }
      }
    }
    List<String> named = described.pack().oneScale();
    for (int i = 0; i < named.size(); i++) {
      if (!groups.contains(named.get(i))) {
        described
            .faults()
            .unknown(described.places().of("one-scale/" + i), "the group", named.get(i), groups);
      }
    }
  }

  private void workbook(PackWorkbook workbook) {
    if (!described.pack().sheets().isEmpty()) {
      add("workbook", "both sheets and a workbook", "one of the two, each in a file of its own");
    }
    if (workbook.worksheets().isEmpty()) {
      add("workbook/worksheets", "no worksheet", "one worksheet or more");
    }
    workbook
        .worksheets()
        .forEach(
            (id, worksheet) -> {
              String path = "workbook/worksheets/" + id;
              worksheet
                  .flats()
                  .forEach(
                      (name, flat) -> {
                        flat(name, flat, new LinkedHashSet<>(worksheet.windows()), path);
                        if (flat.held().any()) {
                          add(
                              path + "/flats/" + name + "/held",
                              "a flat held on a worksheet",
                              "no held: columns and rows are of another width for every reader");
                        }
                      });
            });
  }

  private void identifiers() {
    Map<String, String> seen = new HashMap<>();
    Map<String, String> points = new HashMap<>();
    Map<String, String> callouts = new HashMap<>();
    Set<String> retired = new HashSet<>(described.pack().retired());
    Map<String, Map<String, PackFlat>> owners = new LinkedHashMap<>();
    described.pack().sheets().forEach((id, s) -> owners.put("sheets/" + id, s.flats()));
    PackWorkbook workbook = described.pack().workbook();
    if (workbook != null) {
      workbook.worksheets().forEach((id, w) -> owners.put("workbook/worksheets/" + id, w.flats()));
    }
    owners.forEach(
        (at, flats) -> {
          retired(retired, at.substring(at.lastIndexOf('/') + 1), at);
          flats.forEach(
              (id, flat) -> {
                String path = at + "/flats/" + id;
                once("flat", id, path, seen, retired);
                PackSpots spots = flat.spots();
                for (String point : spots.points().keySet()) {
                  once("point", point, path + "/points/" + point, points, retired);
                }
                spots
                    .callouts()
                    .forEach(
                        (callout, its) -> {
                          String there = path + "/callouts/" + callout;
                          once("callout", callout, there, callouts, retired);
                          retired(retired, its.mark(), there + "/mark");
                        });
              });
        });
  }

  /** An identifier is one thing's alone, and was never another's. */
  private void once(
      String what, String id, String path, Map<String, String> seen, Set<String> retired) {
    retired(retired, id, path);
    String before = seen.putIfAbsent(id, path);
    if (before != null) {
      int line = described.places().of(before).line();
      add(
          path,
          "the " + what + " '" + id + "' again",
          "an identifier of its own (line " + line + " has it already)");
    }
  }

  private void retired(Set<String> retired, String id, String path) {
    if (retired.contains(id)) {
      add(path, "the retired identifier '" + id + "'", "one that was never used");
    }
  }

  private void band(@Nullable PackBand band, String path) {
    if (band != null) {
      areas(band.grid().areas(), path, Map.of("cells", band.cells().keySet()));
      cells(band.cells(), path);
    }
  }

  private void sheet(String id, PackSheet sheet) {
    String path = "sheets/" + id;
    areas(
        sheet.grid().areas(),
        path,
        Map.of(
            "cells", sheet.cells().keySet(),
            "tables", sheet.tables().keySet(),
            "windows", sheet.windows().keySet()));
    cells(sheet.cells(), path);
    if (sheet.further() && !sheet.tables().isEmpty()) {
      add(path + "/further", "further on a sheet with tables", "a sheet of its own for the table");
    }
    sheet.flats().forEach((name, flat) -> flat(name, flat, sheet.windows().keySet(), path));
    sheet
        .tables()
        .forEach(
            (name, table) -> {
              String csv = table.csv();
              if (csv != null) {
                files.file(csv, path + "/tables/" + name + "/csv");
              }
            });
  }

  /** Fields are looked up once here, so that they are answered even where nothing can be laid. */
  private void cells(Map<String, PackCell> cells, String path) {
    cells.forEach(
        (name, cell) -> {
          String at = path + "/cells/" + name;
          text.lines(cell.caption(), at + "/caption");
          text.lines(cell.text(), at + "/text");
        });
  }

  private void flat(String name, PackFlat flat, Set<String> windows, String path) {
    String at = path + "/flats/" + name;
    files.check(flat, at);
    for (String window : flat.windows()) {
      if (!windows.contains(window)) {
        described
            .faults()
            .unknown(described.places().of(at + "/window"), "the window", window, windows);
      }
    }
    if (flat.scaling().group() != null && flat.scaling().share() != null) {
      add(at + "/share", "both group and share", "one of the two");
    }
    if (flat.scaling().group() == null && flat.scaling().ratio() != null) {
      add(at + "/ratio", "a ratio without group", "group, whose scale the ratio is of");
    }
  }

  /** Every drawn area holds one thing, and everything is drawn. */
  private void areas(List<String> rows, String path, Map<String, Set<String>> held) {
    Set<String> drawn = new java.util.LinkedHashSet<>();
    rows.forEach(r -> drawn.addAll(List.of(r.strip().split("\\s+"))));
    drawn.removeIf(a -> a.matches("\\.*"));
    Map<String, String> holders = new HashMap<>();
    List<String> kinds = held.keySet().stream().sorted().toList();
    for (String kind : kinds) {
      for (String name : held.getOrDefault(kind, Set.of())) {
        String at = path + "/" + kind + "/" + name;
        String before = holders.putIfAbsent(name, kind);
        if (before != null) {
          add(at, "'" + name + "' under " + kind + " and under " + before, "one of the two");
        }
        if (!drawn.contains(name)) {
          described.faults().unknown(described.places().of(at), "no area drawn as", name, drawn);
        }
      }
    }
    List<String> lacking = new ArrayList<>(drawn);
    lacking.removeAll(holders.keySet());
    for (String name : lacking) {
      String kind =
          kinds.size() == 1 ? "an entry under cells" : "an entry under cells, tables or windows";
      add(path + "/areas", "the area '" + name + "' without contents", kind);
    }
  }

  private void add(String path, String found, String expected) {
    described.faults().add(described.places().of(path), found, expected);
  }
}
