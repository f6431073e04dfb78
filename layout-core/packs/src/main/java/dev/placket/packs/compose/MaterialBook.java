package dev.placket.packs.compose;

import dev.placket.layout.sheet.GridTrack;
import dev.placket.layout.units.Length;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackColouring;
import dev.placket.packs.description.PackColourways;
import dev.placket.packs.description.PackColumn;
import dev.placket.packs.description.PackMaterial;
import dev.placket.packs.description.PackMaterial.Waste;
import dev.placket.packs.description.PackSheet;
import dev.placket.packs.description.PackTable;
import dev.placket.packs.description.TextPosition;
import dev.placket.packs.description.Words;
import dev.placket.packs.language.StockPhrase;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The materials of a pack, each in the colours of its part of the colourways. */
final class MaterialBook {
  /** A number and its unit. */
  private static final Pattern CONSUMPTION =
      Pattern.compile("[0-9]+(?:[.,][0-9]+)?\\s*(\\p{L}[\\p{L}\u00b2]*|\u33a1)\\.?.*");

  /** Of what is measured, and so may have waste in it. */
  private static final Set<String> MEASURED =
      Set.of(
          "m", "cm", "mm", "metre", "metres", "meter", "meters", "yd", "yds", "yard", "yards", "in",
          "inch", "inches", "ft", "foot", "feet", "m\u00b2", "m2", "sqm", "g", "gram", "grams",
          "kg", "l", "ml");

  private static final Length SHOWN = Length.mm(28);

  private final Described described;
  private final @Nullable ColourBook colours;
  private final Map<String, PackMaterial> materials;

  private MaterialBook(Described described, @Nullable ColourBook colours) {
    this.described = described;
    this.colours = colours;
    this.materials = described.pack().materials();
  }

  /** The materials of a description; slips are noted. */
  static MaterialBook of(Described described, @Nullable ColourBook colours) {
    MaterialBook book = new MaterialBook(described, colours);
    book.materials.forEach(book::check);
    return book;
  }

  private void check(String number, PackMaterial material) {
    String part = material.part();
    Set<String> parts = colours == null ? Set.of() : colours.parts().keySet();
    if (!part.isBlank() && !parts.contains(part)) {
      described
          .faults()
          .unknown(place(number + "/part"), "no part of the colourways named", part, parts);
    }
    Set<String> flats = new LinkedHashSet<>();
    described.pack().sheets().values().forEach(s -> flats.addAll(s.flats().keySet()));
    if (!material.shown().isBlank() && !flats.contains(material.shown())) {
      described.faults().unknown(place(number + "/shown"), "no flat", material.shown(), flats);
    }
    for (String text : material.consumption().byLanguage().values()) {
      if (!text.isBlank()) {
        consumption(number, text.strip(), material.waste());
      }
    }
  }

  private void consumption(String number, String text, @Nullable Waste waste) {
    Matcher m = CONSUMPTION.matcher(text);
    if (!m.matches()) {
      described
          .faults()
          .add(
              place(number + "/consumption"),
              "the consumption '" + text + "'",
              "a number and its unit, as in 2.35 m or 5 pieces");
    } else if (waste == null && MEASURED.contains(m.group(1).toLowerCase(Locale.ROOT))) {
      described
          .faults()
          .add(
              place(number + "/consumption"),
              "the consumption '" + text + "', of which waste may be a part",
              "waste: included, or waste: excluded");
    }
  }

  private TextPosition place(String key) {
    return described.places().of("materials/" + key);
  }

  /** Numbers of those that are asked for; slips are noted. */
  private List<String> asked(List<String> named, String path) {
    Set<String> known = new LinkedHashSet<>(materials.keySet());
    known.add(PackColouring.ALL);
    for (String name : named) {
      if (!known.contains(name)) {
        described.faults().unknown(described.places().of(path), "the material", name, known);
      }
    }
    return named.contains(PackColouring.ALL)
        ? List.copyOf(materials.keySet())
        : named.stream().filter(materials::containsKey).toList();
  }

  /** The flats of the sheet of a table. */
  private Set<String> flats(String path) {
    PackSheet sheet = described.pack().sheets().get(path.split("/")[1]);
    return sheet == null ? Set.of() : sheet.flats().keySet();
  }

  /** The printed table: columns that no material fills are left out. */
  PackTable filled(PackTable table, String path, Headings headings) {
    Map<String, PackMaterial> its = new LinkedHashMap<>();
    for (String number : asked(table.materials(), path + "/materials")) {
      its.put(number, Objects.requireNonNull(materials.get(number)));
    }
    Columns columns = new Columns(its);
    columns.shown(headings, flats(path));
    columns.add(headings.of(StockPhrase.NUMBER), null, (n, m) -> Words.of(n));
    columns.add(headings.of(StockPhrase.MATERIAL), share(1.1), (n, m) -> m.name());
    columns.add(headings.of(StockPhrase.COMPOSITION), share(1.4), (n, m) -> m.composition());
    columns.add(dimension(its, headings), share(0.9), (n, m) -> joined(", ", m.width(), m.size()));
    columns.add(
        headings.of(StockPhrase.SUPPLIER),
        share(1),
        (n, m) -> joined("\n", m.supplier(), Words.of(m.reference())));
    columns.add(headings.of(StockPhrase.PLACEMENT), share(1.4), (n, m) -> m.placement());
    consumption(columns, its, headings);
    if (colours != null && its.values().stream().anyMatch(m -> !m.part().isBlank())) {
      for (String code : colours.asked(List.of(PackColouring.ALL), path)) {
        columns.add(colours.title(code), share(0.8), (n, m) -> colour(colours, m, code));
      }
    }
    return table.with(columns.columns, columns.rows());
  }

  /**
   * Where all state the same of waste, the heading has it; nothing is claimed of what is counted.
   */
  private void consumption(Columns columns, Map<String, PackMaterial> its, Headings headings) {
    List<Waste> stated =
        its.values().stream().map(PackMaterial::waste).filter(Objects::nonNull).distinct().toList();
    Words heading = headings.of(StockPhrase.CONSUMPTION);
    boolean all = its.values().stream().allMatch(m -> m.consumption().blank() || m.waste() != null);
    if (stated.size() == 1 && all) {
      Words waste = waste(stated.get(0), headings);
      heading = Joined.of("\n", List.of(heading, waste), headings.phrases().languages());
      columns.add(heading, null, (n, m) -> m.consumption());
    } else {
      columns.add(
          heading,
          share(0.9),
          (n, m) -> {
            Waste own = m.waste();
            return own == null
                ? m.consumption()
                : joined(", ", m.consumption(), waste(own, headings));
          });
    }
  }

  private static Words waste(Waste waste, Headings headings) {
    return headings.of(
        waste == Waste.INCLUDED ? StockPhrase.WASTE_INCLUDED : StockPhrase.WASTE_EXCLUDED);
  }

  private static Words colour(ColourBook colours, PackMaterial material, String code) {
    PackColourways.Part part = colours.parts().get(material.part());
    return part == null ? Words.NONE : colours.name(part, code);
  }

  /** Over widths, sizes, or both. */
  private static Words dimension(Map<String, PackMaterial> its, Headings headings) {
    List<Words> used = new ArrayList<>();
    if (its.values().stream().anyMatch(m -> !m.width().blank())) {
      used.add(headings.of(StockPhrase.WIDTH));
    }
    if (its.values().stream().anyMatch(m -> !m.size().blank())) {
      used.add(headings.of(StockPhrase.SIZE));
    }
    return Joined.of("\n", used, headings.phrases().languages());
  }

  private Words joined(String separator, Words one, Words other) {
    return Joined.of(separator, List.of(one, other), described.pack().languages());
  }

  private static GridTrack share(double fr) {
    return new GridTrack.Share(fr);
  }

  /** What is likely a slip, in words. */
  List<String> notes() {
    List<String> notes = new ArrayList<>();
    Set<String> without =
        new LinkedHashSet<>(colours == null ? Set.of() : colours.parts().keySet());
    materials.values().forEach(m -> without.remove(m.part()));
    if (!materials.isEmpty() && !without.isEmpty()) {
      notes.add("materials: none has the colours of the part " + String.join(", ", without) + ".");
    }
    Set<String> unlisted = new LinkedHashSet<>(materials.keySet());
    described
        .pack()
        .sheets()
        .values()
        .forEach(
            s ->
                s.tables()
                    .values()
                    .forEach(t -> asked(t.materials(), "materials").forEach(unlisted::remove)));
    if (!unlisted.isEmpty()) {
      notes.add("materials: no table lists " + String.join(", ", unlisted) + ".");
    }
    return notes;
  }

  /** Columns of a table that is being made. */
  private static final class Columns {
    private final Map<String, PackMaterial> materials;
    private final List<PackColumn> columns = new ArrayList<>();
    private final List<List<Words>> values = new ArrayList<>();

    Columns(Map<String, PackMaterial> materials) {
      this.materials = materials;
    }

    /** Pictures, where a flat of the sheet shows a material. */
    void shown(Headings headings, Set<String> flats) {
      if (materials.values().stream().anyMatch(m -> flats.contains(m.shown()))) {
        columns.add(
            new PackColumn(
                headings.of(StockPhrase.SHOWN), new GridTrack.Fixed(SHOWN), null, true, false));
        values.add(of((n, m) -> Words.of(flats.contains(m.shown()) ? m.shown() : "")));
      }
    }

    void add(Words heading, @Nullable GridTrack width, Value value) {
      List<Words> its = of(value);
      if (its.stream().anyMatch(w -> !w.blank())) {
        columns.add(MeasuredList.column(heading, width, PackColumn.Align.LEFT));
        values.add(its);
      }
    }

    private List<Words> of(Value value) {
      List<Words> its = new ArrayList<>();
      materials.forEach((number, material) -> its.add(value.of(number, material)));
      return its;
    }

    List<List<Words>> rows() {
      List<List<Words>> rows = new ArrayList<>();
      for (int r = 0; r < materials.size(); r++) {
        int row = r;
        Function<List<Words>, Words> cell = column -> column.get(row);
        rows.add(values.stream().map(cell).toList());
      }
      return rows;
    }
  }

  /** What a column has of a material. */
  private interface Value {
    Words of(String number, PackMaterial material);
  }
}
