package dev.placket.packs.compose;

import dev.placket.layout.sheet.GridTrack;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackColouring;
import dev.placket.packs.description.PackColourways;
import dev.placket.packs.description.PackColumn;
import dev.placket.packs.description.PackTable;
import dev.placket.packs.description.Words;
import dev.placket.packs.language.StockPhrase;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The colourways of a pack, of which every part has a colour in each. */
final class ColourBook {
  private final PackColourways said;
  private final List<String> codes;
  private final Described described;

  private ColourBook(Described described, PackColourways said) {
    this.described = described;
    this.said = said;
    this.codes = List.copyOf(said.ways().keySet());
  }

  /** The colourways of a description; null where it has none. Slips are noted. */
  static @Nullable ColourBook of(Described described) {
    PackColourways said = described.pack().colourways();
    if (said == null) {
      return null;
    }
    ColourBook book = new ColourBook(described, said);
    book.check();
    return book;
  }

  private void check() {
    if (codes.isEmpty()) {
      add("ways", "no colourway", "one or more, as in K1: Silt");
    }
    Set<String> known = new LinkedHashSet<>(said.colours().keySet());
    known.add(PackColourways.NO_PART);
    Map<String, String> owners = new LinkedHashMap<>();
    said.parts()
        .forEach(
            (name, part) -> {
              String path = "parts/" + name;
              int count = part.colours().size();
              if (count != 1 && count != codes.size()) {
                add(
                    path + "/colours",
                    "part "
                        + name
                        + " with "
                        + count
                        + " colours for "
                        + codes.size()
                        + " colourways",
                    "one for each of " + String.join(", ", codes) + ", or one for all of them");
              }
              for (int i = 0; i < count; i++) {
                unknown(path + "/colours/" + i, "the colour", part.colours().get(i), known);
              }
              for (String area : part.fills()) {
                String other = owners.putIfAbsent(area, name);
                if (other != null) {
                  add(
                      path + "/fills",
                      "the area " + area + " in part " + name + " and in part " + other,
                      "each area in one part");
                }
              }
            });
  }

  /** Codes of those that are asked for, in the order of the pack; slips are noted. */
  List<String> asked(List<String> named, String path) {
    Set<String> known = new LinkedHashSet<>(codes);
    known.add(PackColouring.ALL);
    for (String name : named) {
      if (!known.contains(name)) {
        described.faults().unknown(described.places().of(path), "the colourway", name, known);
      }
    }
    return named.contains(PackColouring.ALL)
        ? codes
        : codes.stream().filter(named::contains).toList();
  }

  /** Its code and its name. */
  Words title(String code) {
    Words name = Objects.requireNonNull(said.ways().get(code));
    return Joined.of(" ", List.of(Words.of(code), name), languages());
  }

  /** The parts by their names. */
  Map<String, PackColourways.Part> parts() {
    return said.parts();
  }

  private PackColourways.@Nullable Colour colour(PackColourways.Part part, String code) {
    String word = part.colour(codes.indexOf(code));
    return word == null ? null : said.colours().get(word);
  }

  /** Whether a colourway lacks a part. */
  boolean lacks(PackColourways.Part part, String code) {
    return PackColourways.NO_PART.equals(part.colour(codes.indexOf(code)));
  }

  /** The colour of a part on drawings, as {@code #RRGGBB}; null with the slip noted. */
  @Nullable String screen(PackColourways.Part part, String code, List<String> notes) {
    PackColourways.Colour colour = colour(part, code);
    if (colour == null) {
      return null;
    }
    PackColourways.Lab lab = colour.lab();
    if (lab != null) {
      ScreenColour screen = ScreenColour.of(lab);
      String word = part.colour(codes.indexOf(code));
      String note =
          "colour %s: screens cannot show it; drawings have %s, the nearest in each channel."
              .formatted(word, screen.hex());
      if (!screen.shown() && !notes.contains(note)) {
        notes.add(note);
      }
      return screen.hex();
    }
    if (colour.screen() == null) {
      String word = part.colour(codes.indexOf(code));
      add(
          "colours/" + word,
          "the colour " + word + ", which fills drawings, without screen",
          "screen, as in \"#8A7F70\", or lab");
    }
    return colour.screen();
  }

  /** What the table prints of the colour of a part. */
  Words printed(PackColourways.Part part, String code) {
    if (lacks(part, code)) {
      return Words.of("\u2013");
    }
    PackColourways.Colour colour = colour(part, code);
    if (colour == null) {
      return Words.NONE;
    }
    List<Words> texts = new ArrayList<>();
    for (PackColourways.Printed each : said.printed()) {
      texts.add(
          switch (each) {
            case NAME -> colour.name();
            case CODE -> Words.of(colour.code());
            case REFERENCE -> part.reference().blank() ? colour.reference() : part.reference();
            case SCREEN -> Words.of(hex(colour));
          });
    }
    return Joined.of(", ", texts, languages());
  }

  private static String hex(PackColourways.Colour colour) {
    PackColourways.Lab lab = colour.lab();
    String stated = colour.screen();
    return lab != null ? ScreenColour.of(lab).hex() : stated == null ? "" : stated;
  }

  /** The name of the colour of a part. */
  Words name(PackColourways.Part part, String code) {
    PackColourways.Colour colour = colour(part, code);
    return colour == null ? Words.of("\u2013") : colour.name();
  }

  /** The table of parts and colourways. */
  PackTable filled(PackTable table, String path, Headings headings) {
    List<String> ways = asked(table.colourways(), path + "/colourways");
    List<PackColumn> columns = new ArrayList<>();
    columns.add(column(headings.of(StockPhrase.PART)));
    ways.forEach(code -> columns.add(column(title(code))));
    List<List<Words>> rows = new ArrayList<>();
    for (PackColourways.Part part : said.parts().values()) {
      List<Words> row = new ArrayList<>(List.of(part.name()));
      ways.forEach(code -> row.add(printed(part, code)));
      rows.add(row);
    }
    return table.with(columns, rows);
  }

  private static PackColumn column(Words heading) {
    return MeasuredList.column(heading, new GridTrack.Share(1), PackColumn.Align.LEFT);
  }

  /** What is stated and used nowhere. */
  List<String> notes() {
    Set<String> unused = new LinkedHashSet<>(said.colours().keySet());
    said.parts().values().forEach(part -> part.colours().forEach(unused::remove));
    return unused.isEmpty()
        ? List.of()
        : List.of("colourways: no part has the colour " + String.join(", ", unused) + ".");
  }

  private List<String> languages() {
    return described.pack().languages();
  }

  private void unknown(String key, String what, String name, Set<String> known) {
    if (!known.contains(name)) {
      described.faults().unknown(described.places().of("colourways/" + key), what, name, known);
    }
  }

  private void add(String key, String found, String expected) {
    described.faults().add(described.places().of("colourways/" + key), found, expected);
  }
}
