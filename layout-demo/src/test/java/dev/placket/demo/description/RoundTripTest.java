package dev.placket.demo.description;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.placket.demo.pack.ExamplePack;
import dev.placket.layout.callout.LeaderEnd;
import dev.placket.layout.fit.LeadRule;
import dev.placket.layout.flat.Held;
import dev.placket.layout.flat.Role;
import dev.placket.layout.sheet.GridTrack;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.PlanePoint;
import dev.placket.packs.description.CheckPart;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.Pack;
import dev.placket.packs.description.PackBand;
import dev.placket.packs.description.PackBox;
import dev.placket.packs.description.PackCallout;
import dev.placket.packs.description.PackCell;
import dev.placket.packs.description.PackColouring;
import dev.placket.packs.description.PackColourways;
import dev.placket.packs.description.PackColumn;
import dev.placket.packs.description.PackDimension;
import dev.placket.packs.description.PackFlat;
import dev.placket.packs.description.PackGrid;
import dev.placket.packs.description.PackLeaders;
import dev.placket.packs.description.PackMaterial;
import dev.placket.packs.description.PackMeasurements;
import dev.placket.packs.description.PackPoint;
import dev.placket.packs.description.PackReader;
import dev.placket.packs.description.PackRounding;
import dev.placket.packs.description.PackSamples;
import dev.placket.packs.description.PackSheet;
import dev.placket.packs.description.PackSpots;
import dev.placket.packs.description.PackTable;
import dev.placket.packs.description.PackWindow;
import dev.placket.packs.description.PackWorkbook;
import dev.placket.packs.description.PackWorksheet;
import dev.placket.packs.description.PackWriter;
import dev.placket.packs.description.RevisionPart;
import dev.placket.packs.description.Words;
import dev.placket.packs.history.LogEntry;
import dev.placket.packs.history.PackHistory;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.sample.SampleVerdict;
import dev.placket.packs.sample.Wash;
import dev.placket.packs.text.Lettering;
import dev.placket.packs.text.TextBlock.Align;
import dev.placket.packs.text.TextBlock.Stand;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Description to pack to description to pack is the same. */
class RoundTripTest {
  private static PackColouring colouring(
      Map<String, String> fills, List<String> names, boolean placed) {
    Map<String, List<String>> lines = new LinkedHashMap<>(PackColouring.onAll(names));
    if (placed) {
      lines.put("seams", List.of("body", PackColouring.PAPER));
    }
    return new PackColouring(fills, lines, names, names);
  }

  private static Described read(String text) throws Refusal {
    return PackReader.read(Path.of("pack.yaml"), text.getBytes(StandardCharsets.UTF_8));
  }

  @Example
  void theExampleComesBack() throws Refusal {
    Pack pack = read(ExamplePack.TEXT).pack();
    assertEquals(pack, read(PackWriter.write(pack)).pack());
  }

  @Property(tries = 300)
  void anyPackComesBack(@ForAll("packs") Pack pack) throws Refusal {
    String text = PackWriter.write(pack);
    Described again = read(text);
    assertEquals(List.of(), again.faults().all(), text);
    assertEquals(pack, again.pack());
    assertEquals(text, PackWriter.write(again.pack()));
  }

  @Provide
  Arbitrary<Pack> packs() {
    Arbitrary<Map<String, Words>> fields =
        Arbitraries.maps(names(), words()).ofMaxSize(4).map(LinkedHashMap::new);
    Arbitrary<PackBand> bands =
        Combinators.combine(grids(true), named(cells())).as(PackBand::new).injectNull(0.3);
    Arbitrary<List<String>> files = names().map(n -> n + ".ttf").list().ofMaxSize(2);
    return Combinators.combine(
            fields,
            papers(),
            margins(),
            files,
            bands,
            bands,
            named(sheets()),
            names().list().ofMaxSize(2))
        .as(
            (f, paper, m, fonts, header, foot, sheets, retired) ->
                new Pack(
                    List.of("en", "de"),
                    List.of("de"),
                    "terms.csv",
                    f,
                    paper,
                    m,
                    fonts,
                    header,
                    foot,
                    sheets,
                    null,
                    retired,
                    retired.isEmpty() ? null : new PackRounding(List.of(0.5, 2.5), 0.25),
                    retired.size() == 1
                        ? Map.of("front", Length.mm(0.6), "detail", Length.mm(0.5))
                        : retired.isEmpty() ? Map.of() : Map.of("", Length.mm(0.6)),
                    retired.isEmpty() ? null : MEASURES,
                    retired.isEmpty() ? null : SAMPLES,
                    retired.isEmpty() ? null : COLOURWAYS,
                    retired.size() == 1 ? MATERIALS : Map.of(),
                    retired.isEmpty() ? PackHistory.NONE : HISTORY,
                    retired))
        .filter(p -> !p.sheets().isEmpty());
  }

  private static final PackHistory HISTORY =
      new PackHistory(
          List.of(
              new LogEntry("B", "2027-01-12", "Design room", "Construction", "Cuff tab added"),
              new LogEntry("C", "", "", "", "Hem turned twice")),
          Map.of());

  /** Graded by groups, graded by one rule, and typed. */
  private static final PackMeasurements MEASURES =
      new PackMeasurements(
          "cm",
          List.of("cm", "in"),
          Map.of("in", "1/16"),
          Map.of("regular", List.of("30", "32"), "long", List.of("30L", "32L")),
          List.of("30", "30L"),
          true,
          Map.of(
              "A",
              new PackMeasurements.Point(
                  Words.of("Waist"),
                  new Words(Map.of("en", "along the top", "de", "oben")),
                  "half stretched",
                  "+1 -0.5",
                  "38",
                  Map.of("", "2", "long", "add 1, 2"),
                  List.of()),
              "B",
              new PackMeasurements.Point(
                  Words.of("Hip"), Words.NONE, "", "", "50", Map.of("", "2, 32 3"), List.of()),
              "C",
              new PackMeasurements.Point(
                  Words.of("Fly"),
                  Words.NONE,
                  "",
                  "0.3",
                  "",
                  Map.of(),
                  List.of("15", "15", "15.5", "15.5"))),
          null,
          null,
          "");

  /** One with all that may be stated, one with the least. */
  private static final PackSamples SAMPLES =
      new PackSamples(
          List.of(
              new PackSamples.Source("fits.csv", List.of()),
              new PackSamples.Source("fit-2.xlsx", List.of("fit-2", "Blank!A1:K20"))),
          Map.of(
              "fit-1",
              new PackSamples.Check(
                  new Words(Map.of("en", "first fit", "de", "erste Anprobe")),
                  "1",
                  Words.of("loden"),
                  "2027-01-12",
                  "2027-01-14",
                  Wash.AFTER,
                  Words.of("lining in black"),
                  SampleVerdict.APPROVED_WITH_COMMENTS,
                  "Design room",
                  List.of("30", "32")),
              "fit-2",
              new PackSamples.Check(
                  Words.of("second fit"),
                  "",
                  Words.NONE,
                  "",
                  "",
                  null,
                  Words.NONE,
                  null,
                  "",
                  List.of())));

  /** Colours stated in each of their ways; one of one part, one without. */
  private static final PackColourways COLOURWAYS =
      new PackColourways(
          Map.of("K1", new Words(Map.of("en", "Silt", "de", "Schlick")), "K2", Words.of("Alder")),
          Map.of(
              "silt",
              new PackColourways.Colour(
                  Words.of("Silt"), "18-03", Words.of("lab dip 2"), "#8A7F70", null),
              "alder",
              new PackColourways.Colour(
                  Words.of("Alder"), "", Words.NONE, null, new PackColourways.Lab(25.5, -9.25, 3))),
          Map.of(
              "shell",
              new PackColourways.Part(
                  Words.of("Shell"),
                  List.of("shell"),
                  Map.of("seams", List.of("shell"), "edges", List.of()),
                  List.of("silt", "alder"),
                  Words.of("match shell")),
              "lining",
              new PackColourways.Part(
                  Words.NONE, List.of(), Map.of(), List.of("silt"), Words.NONE)),
          List.of(PackColourways.Printed.SCREEN, PackColourways.Printed.NAME));

  private static final Map<String, PackMaterial> MATERIALS =
      Map.of(
          "M1",
          new PackMaterial(
              Words.of("Shell"),
              "twill",
              Words.of("Hollow Mill"),
              "420",
              new Words(Map.of("en", "wool", "de", "Wolle")),
              Words.of("150 cm"),
              Words.NONE,
              Words.of("body"),
              Words.of("2.35 m"),
              PackMaterial.Waste.INCLUDED,
              "shell"));

  @Property(tries = 100)
  void anyWorkbookComesBack(@ForAll("workbooks") PackWorkbook workbook) throws Refusal {
    Pack pack =
        new Pack(
            List.of("en", "de"),
            List.of("en", "de"),
            null,
            Map.of(),
            Pack.USUAL_PAPER,
            Pack.USUAL_MARGINS,
            List.of(),
            null,
            null,
            Map.of(),
            workbook,
            List.of(),
            null,
            Map.of(),
            null,
            null,
            null,
            Map.of(),
            PackHistory.NONE,
            List.of());
    String text = PackWriter.write(pack);
    Described again = read(text);
    assertEquals(List.of(), again.faults().all(), text);
    assertEquals(pack, again.pack());
  }

  @Provide
  Arbitrary<PackWorkbook> workbooks() {
    Arbitrary<List<String>> ranges =
        Arbitraries.of("B5:H30", "Details", "A1").list().uniqueElements().ofMaxSize(2);
    Arbitrary<PackWorksheet> worksheets =
        Combinators.combine(names(), ranges, ranges, named(flats())).as(PackWorksheet::new);
    return Combinators.combine(names().map(n -> n + ".xlsx"), named(worksheets))
        .as(PackWorkbook::new);
  }

  private static Arbitrary<PackSheet> sheets() {
    Arbitrary<Set<LeadRule>> rules = Arbitraries.of(LeadRule.class).set();
    Arbitrary<List<Object>> contents =
        Combinators.combine(
                named(cells()), named(tables()), named(windows()), named(flats()), flags())
            .as((a, b, c, d, e) -> List.of(a, b, c, d, e));
    return Combinators.combine(
            words(),
            papers().injectNull(0.5),
            margins().injectNull(0.5),
            grids(false),
            contents,
            rules,
            lengths().injectNull(0.5),
            lengths().injectNull(0.5))
        .as(RoundTripTest::sheet);
  }

  @SuppressWarnings("unchecked")
  private static PackSheet sheet(
      Words name,
      PaperSize paper,
      Margins margins,
      PackGrid grid,
      List<Object> contents,
      Set<LeadRule> rules,
      Length gap,
      Length clearance) {
    return new PackSheet(
        name,
        paper,
        margins,
        grid,
        (Map<String, PackCell>) contents.get(0),
        (Map<String, PackTable>) contents.get(1),
        (Map<String, PackWindow>) contents.get(2),
        (Map<String, PackFlat>) contents.get(3),
        (Boolean) contents.get(4) ? "fit-1" : null,
        (Boolean) contents.get(4) ? List.of("photographs") : List.of(),
        (Boolean) contents.get(4),
        PackLeaders.values()[((Map<?, ?>) contents.get(0)).size() % 4],
        rules,
        gap,
        clearance);
  }

  private static Arbitrary<PackCell> cells() {
    Arbitrary<Length> heights = Arbitraries.of(Lettering.STEPS);
    return Combinators.combine(
            words(),
            words(),
            heights,
            heights,
            Arbitraries.of(Align.class),
            Arbitraries.of(Stand.class).injectNull(0.5),
            Arbitraries.of(PackBox.class).injectNull(0.7))
        .as(
            (caption, text, size, least, align, stand, box) ->
                new PackCell(
                    caption,
                    box == null && stand != null ? text : Words.NONE,
                    size,
                    least,
                    align,
                    stand,
                    box,
                    box == null && stand == null ? "logo.svg" : null));
  }

  private static Arbitrary<PackWindow> windows() {
    return Combinators.combine(Arbitraries.of(PackWindow.At.class), lengths(), lengths(), cells())
        .as(PackWindow.Corner::new)
        .list()
        .ofMaxSize(2)
        .map(PackWindow::new);
  }

  /** A table of measures, of the check of a sample, of colourways or of materials. */
  private static boolean made(String sample) {
    return sample.length() > 1 && sample.length() < 7;
  }

  private static Arbitrary<PackTable> tables() {
    Arbitrary<List<PackColumn>> columns =
        Combinators.combine(
                words(),
                tracks().injectNull(0.5),
                Arbitraries.of(PackColumn.Align.class).injectNull(0.5),
                flags(),
                flags())
            .as(PackColumn::new)
            .list()
            .ofMinSize(1)
            .ofMaxSize(3);
    Arbitrary<Length> heights = Arbitraries.of(Lettering.STEPS);
    return columns.flatMap(
        c ->
            Combinators.combine(
                    words().list().ofSize(c.size()).list().ofMaxSize(3),
                    names().injectNull(0.5),
                    texts(),
                    heights,
                    heights)
                .as(
                    (rows, csv, sample, size, least) ->
                        new PackTable(
                            made(sample) ? List.of() : c,
                            made(sample) || csv != null ? List.of() : rows,
                            made(sample) ? null : csv,
                            sample.length() == 3 ? List.of("A", "B") : List.of(),
                            sample.length() == 2 ? CheckPart.values()[c.size()] : null,
                            sample.length() == 4 ? List.of("K1", "K2") : List.of(),
                            sample.length() == 5 ? List.of("all") : List.of(),
                            sample.length() == 6 ? RevisionPart.values()[c.size() % 2] : null,
                            sample,
                            size,
                            least,
                            Length.mm(20))));
  }

  private static Arbitrary<PackFlat> flats() {
    Arbitrary<PackFlat.Scaling> scaling =
        Combinators.combine(
                names().injectNull(0.5),
                numbers().injectNull(0.5),
                numbers().injectNull(0.5),
                lengths().injectNull(0.5))
            .as(PackFlat.Scaling::new);
    Arbitrary<Held> held =
        Combinators.combine(
                lengths().injectNull(0.5), lengths().injectNull(0.5), numbers().injectNull(0.5))
            .as(Held::new);
    Arbitrary<Map<String, String>> fills =
        Arbitraries.maps(
                names(),
                Arbitraries.integers().between(0, 0xFFFFFF).map(i -> String.format("#%06X", i)))
            .ofMaxSize(2);
    Arbitrary<List<Object>> sizes =
        Combinators.combine(lengths().injectNull(0.5), lengths().injectNull(0.5), flags())
            .as((a, b, c) -> java.util.Arrays.asList(a, b, c));
    return Combinators.combine(
            names(),
            Arbitraries.of(Role.class),
            names().list().ofMaxSize(2),
            scaling,
            sizes,
            words().injectNull(0.5),
            Combinators.combine(held, spots()).as(Tied::new),
            fills)
        .as(
            (file, role, windows, s, size, caption, tied, f) ->
                new PackFlat(
                    file,
                    role,
                    windows,
                    s,
                    (Length) size.get(0),
                    (Length) size.get(1),
                    (Boolean) size.get(2),
                    caption,
                    Words.of("note"),
                    null,
                    tied.held(),
                    colouring(f, windows, (Boolean) size.get(2)),
                    windows,
                    (Length) size.get(0),
                    windows.isEmpty() ? null : windows.get(0),
                    windows,
                    tied.spots()));
  }

  private record Tied(Held held, PackSpots spots) {}

  private static Arbitrary<PackSpots> spots() {
    Arbitrary<Double> places = Arbitraries.doubles().between(-900, 900).ofScale(6);
    Arbitrary<PackPoint> points =
        Arbitraries.oneOf(
            names().map(element -> new PackPoint(null, element, null)),
            Combinators.combine(places, places)
                .as((x, y) -> new PackPoint(new PlanePoint(x, y), null, null)),
            Combinators.combine(places, places, names())
                .as((x, y, element) -> new PackPoint(new PlanePoint(x, y), element, null)),
            Combinators.combine(
                    Arbitraries.integers().between(0, 100), Arbitraries.integers().between(0, 100))
                .as((x, y) -> new PackPoint(null, null, new PlanePoint(x / 100.0, y / 100.0))));
    Arbitrary<PackDimension> dimensions =
        Combinators.combine(
                names(),
                names(),
                Arbitraries.of(PackDimension.Run.class),
                places.injectNull(0.3),
                Arbitraries.of("straight", "edge", "along"))
            .as(
                (from, to, run, beside, kind) ->
                    new PackDimension(
                        from,
                        kind.equals("edge") ? "" : to,
                        kind.equals("straight") ? run : PackDimension.Run.STRAIGHT,
                        beside,
                        kind.equals("edge") ? List.of(to, from) : List.of(),
                        kind.equals("along") ? "seam" : ""));
    Arbitrary<PackCallout> callouts =
        Combinators.combine(
                names().list().uniqueElements().ofMinSize(1).ofMaxSize(3),
                words().injectNull(0.3),
                Arbitraries.of("", "1", "D2"),
                Arbitraries.of("", "collar"),
                numbers().injectNull(0.5),
                Arbitraries.of(LeaderEnd.class).injectNull(0.5))
            .filter((at, text, mark, detail, region, end) -> text != null || !mark.isEmpty())
            .as(PackCallout::new);
    return Combinators.combine(named(points), named(callouts), named(dimensions))
        .as(PackSpots::new);
  }

  private static <T> Arbitrary<Map<String, T>> named(Arbitrary<T> values) {
    return Arbitraries.maps(names(), values).ofMaxSize(2);
  }

  private static Arbitrary<String> names() {
    return Arbitraries.strings()
        .withCharRange('a', 'z')
        .withChars("0123456789")
        .ofMinLength(1)
        .ofMaxLength(6);
  }

  private static Arbitrary<Words> words() {
    return Arbitraries.oneOf(
        texts().map(Words::of),
        Combinators.combine(texts(), texts()).as((a, b) -> new Words(Map.of("en", a, "de", b))));
  }

  /** Text that YAML likes to take for something else is among it. */
  private static Arbitrary<String> texts() {
    return Arbitraries.oneOf(
        Arbitraries.of(
            "",
            "yes",
            "~",
            "null",
            "1_000",
            "0x1F",
            "12:30",
            "- a",
            "a: b",
            "#c",
            "'",
            "{a}",
            "é\nx ",
            " y",
            "1.50",
            "2027-02-11"),
        Arbitraries.strings().withCharRange(' ', '~').ofMaxLength(8));
  }

  private static Arbitrary<Boolean> flags() {
    return Arbitraries.of(true, false);
  }

  private static Arbitrary<Double> numbers() {
    return Arbitraries.doubles().between(0.001, 1000).ofScale(6).filter(d -> d > 0);
  }

  private static Arbitrary<Length> lengths() {
    return Arbitraries.oneOf(
        Arbitraries.integers().between(1, 4000).map(i -> Length.mm(i / 10.0)),
        Arbitraries.integers().between(1, 200).map(i -> Length.in(i / 8.0)),
        Arbitraries.doubles().between(0.1, 900).ofScale(9).map(Length::pt));
  }

  private static Arbitrary<GridTrack> tracks() {
    return Arbitraries.oneOf(
        lengths().map(GridTrack.Fixed::new), numbers().map(GridTrack.Share::new));
  }

  private static Arbitrary<PackGrid> grids(boolean lengthsOnly) {
    Arbitrary<GridTrack> rows = lengthsOnly ? lengths().map(GridTrack.Fixed::new) : tracks();
    Arbitrary<String> row = names().list().ofMinSize(1).ofMaxSize(3).map(l -> String.join(" ", l));
    return Combinators.combine(
            tracks().list().ofMinSize(1).ofMaxSize(3),
            rows.list().ofMinSize(1).ofMaxSize(3),
            row.list().ofMinSize(1).ofMaxSize(3))
        .as(PackGrid::new);
  }

  private static Arbitrary<Margins> margins() {
    return Combinators.combine(lengths(), lengths(), lengths(), lengths()).as(Margins::new);
  }

  private static Arbitrary<PaperSize> papers() {
    return Arbitraries.oneOf(
        Arbitraries.of(PaperSize.NAMED),
        Arbitraries.of(PaperSize.NAMED).map(PaperSize::landscape),
        Combinators.combine(
                Arbitraries.integers().between(30, 900), Arbitraries.integers().between(30, 900))
            .as((w, h) -> new PaperSize("custom", Length.mm(w), Length.mm(h))));
  }
}
