package dev.placket.packs.description;

import dev.placket.layout.fit.LeadRule;
import dev.placket.layout.sheet.GridTrack;
import dev.placket.layout.units.Length;
import dev.placket.packs.description.PackWindow.At;
import dev.placket.packs.description.PackWindow.Corner;
import dev.placket.packs.text.Lettering;
import dev.placket.packs.text.TextBlock.Align;
import dev.placket.packs.text.TextBlock.Stand;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads a sheet, and the bands that sheets share. */
final class SheetReader {
  private static final List<String> SHEET =
      List.of(
          "name",
          "paper",
          "margins",
          "columns",
          "rows",
          "areas",
          "cells",
          "tables",
          "windows",
          "flats",
          "check",
          "photographs",
          "further",
          "leaders",
          "rules",
          "gap",
          "clearance");
  private static final List<String> BAND = List.of("columns", "rows", "areas", "cells");
  private static final Map<String, PackBox> BOXES = Spelled.words(PackBox.values());

  private static final List<String> CELL =
      List.of("caption", "text", "size", "least", "align", "stand", "box", "picture");
  private static final List<String> CORNER =
      List.of(
          "at", "width", "height", "caption", "text", "size", "least", "align", "stand", "box",
          "picture");
  private static final List<String> RULES = List.copyOf(Spelled.words(LeadRule.values()).keySet());

  static final Map<String, Length> HEIGHTS = heights();
  static final Map<String, Align> ALIGNS = Spelled.words(Align.values());
  private static final Map<String, PackLeaders> LEADERS = Spelled.words(PackLeaders.values());
  private static final Map<String, Stand> STANDS = Spelled.words(Stand.values());
  private static final Map<String, At> CORNERS = Spelled.words(At.values());

  private final NodeValues values;
  private final PackReader pack;
  private final TableReader tables;
  private final FlatReader flats;
  private final FlatAgain again;

  SheetReader(NodeValues values, PackReader pack, FlatAgain again) {
    this.again = again;
    this.values = values;
    this.pack = pack;
    this.tables = new TableReader(values);
    this.flats = new FlatReader(values);
  }

  private Map<String, PackFlat> flats(String sheet, @Nullable PackNode node) {
    Map<String, PackFlat> read = new LinkedHashMap<>();
    values
        .named(node, "a flat", (id, n) -> flats.flat(id, again.whole(id, n)))
        .forEach(
            (id, flat) -> {
              PackNode own = node instanceof PackNode.Keys keys ? keys.values().get(id) : null;
              boolean later = own != null && again.is(id, own);
              read.put(later ? again.named(id, sheet) : id, flat);
            });
    if (node != null) {
      again.keep(node);
    }
    return read;
  }

  private @Nullable String check(@Nullable PackNode node) {
    return node == null ? null : values.text(node, "");
  }

  PackSheet sheet(String id, PackNode node) {
    Entries e = new Entries(node, "sheet " + id, SHEET, values.faults());
    PackNode paper = e.get("paper");
    PackNode margins = e.get("margins");
    return new PackSheet(
        values.words(e.need("name"), Words.of(id)),
        paper == null ? null : pack.paper(paper, Pack.USUAL_PAPER),
        margins == null ? null : pack.margins(margins, Pack.USUAL_MARGINS),
        grid(e),
        values.named(e.get("cells"), "a cell", (name, n) -> cell(name, n, CELL)),
        values.named(e.get("tables"), "a table", tables::table),
        values.named(e.get("windows"), "a window", this::window),
        flats(id, e.get("flats")),
        check(e.get("check")),
        values.oneOrMore(e.get("photographs"), "windows"),
        values.flag(e.get("further"), false),
        leaders(e.get("leaders")),
        rules(e.get("rules")),
        values.length(e.get("gap"), 0),
        values.length(e.get("clearance"), 0));
  }

  private PackLeaders leaders(@Nullable PackNode node) {
    PackLeaders stated = values.choice(node, LEADERS, "how leaders run");
    return stated == null ? PackLeaders.AUTO : stated;
  }

  @Nullable PackBand band(@Nullable PackNode node, String what) {
    if (node == null) {
      return null;
    }
    Entries e = new Entries(node, what, BAND, values.faults());
    PackGrid grid = grid(e);
    PackNode rows = e.get("rows");
    if (rows != null && !grid.rows().stream().allMatch(r -> r instanceof GridTrack.Fixed)) {
      values
          .faults()
          .add(rows.mark(), "a share, or auto, among the rows of " + what, "lengths, as in 10mm");
    } else if (rows == null && !grid.areas().isEmpty()) {
      e.need("rows");
    }
    return new PackBand(
        grid, values.named(e.get("cells"), "a cell", (name, n) -> cell(name, n, CELL)));
  }

  private PackGrid grid(Entries e) {
    List<String> areas =
        values.oneOrMore(e.need("areas"), "rows of area names, as in: - front back");
    int across = areas.isEmpty() ? 1 : areas.get(0).strip().split("\\s+").length;
    List<GridTrack> columns = values.list(e.get("columns"), "column widths", values::track);
    List<GridTrack> rows = values.list(e.get("rows"), "row heights", values::row);
    return new PackGrid(
        columns.isEmpty() ? PackGrid.shares(across) : columns,
        rows.isEmpty() ? PackGrid.shares(Math.max(1, areas.size())) : rows,
        areas);
  }

  private PackCell cell(String name, PackNode node, List<String> keys) {
    if (node instanceof PackNode.Text text) {
      return PackCell.of("", text.value());
    }
    Entries e = new Entries(node, "cell " + name, keys, values.faults());
    Length size = values.choice(e.get("size"), HEIGHTS, "the height of capitals");
    Length least = values.choice(e.get("least"), HEIGHTS, "the height of capitals");
    Align align = values.choice(e.get("align"), ALIGNS, "the alignment");
    PackNode box = e.get("box");
    PackNode text = e.get("text");
    PackNode picture = e.get("picture");
    if (picture != null && (text != null || box != null)) {
      values.faults().add(picture.mark(), "a picture beside text or a box", "a cell of its own");
    }
    if (box != null && text != null) {
      values.faults().add(text.mark(), "text in a box, which stays empty", "a caption, or no box");
    }
    return new PackCell(
        values.words(e.get("caption"), Words.NONE),
        values.words(text, Words.NONE),
        size == null ? Lettering.VALUE : size,
        least == null ? Lettering.CAPTION : least,
        align == null ? Align.LEFT : align,
        values.choice(e.get("stand"), STANDS, "the place of text"),
        values.choice(box, BOXES, "the box"),
        picture == null ? null : values.text(picture, ""));
  }

  private PackWindow window(String name, PackNode node) {
    Entries e = new Entries(node, "window " + name, List.of("corners"), values.faults());
    return new PackWindow(values.list(e.get("corners"), "corners", this::corner));
  }

  private @Nullable Corner corner(PackNode node) {
    Entries e = new Entries(node, "the corner", CORNER, values.faults());
    At at = values.choice(e.need("at"), CORNERS, "the corner");
    Length width = values.length(e.need("width"), 0.001);
    Length height = values.length(e.need("height"), 0.001);
    return at == null || width == null || height == null
        ? null
        : new Corner(at, width, height, cell("in the corner", node, CORNER));
  }

  private Set<LeadRule> rules(@Nullable PackNode node) {
    if (node == null) {
      return LeadRule.ALL;
    }
    Entries e = new Entries(node, "rules", RULES, values.faults());
    Set<LeadRule> rules = EnumSet.noneOf(LeadRule.class);
    for (LeadRule rule : LeadRule.values()) {
      if (values.flag(e.get(Spelled.word(rule)), true)) {
        rules.add(rule);
      }
    }
    return rules;
  }

  private static Map<String, Length> heights() {
    Map<String, Length> heights = new LinkedHashMap<>();
    Lettering.STEPS.forEach(s -> heights.put(Spelled.length(s), s));
    return heights;
  }
}
