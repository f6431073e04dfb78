package dev.placket.packs.description;

import dev.placket.layout.fit.LeadRule;
import dev.placket.layout.flat.Held;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.units.Length;
import dev.placket.packs.history.LogEntry;
import dev.placket.packs.text.Lettering;
import dev.placket.packs.text.TextBlock;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.Yaml;

/** Writes a pack as a description that reads back to the same pack. */
public final class PackWriter {
  private final Pack pack;

  private PackWriter(Pack pack) {
    this.pack = pack;
  }

  /** The description of a pack, in YAML. */
  public static String write(Pack pack) {
    DumperOptions options = new DumperOptions();
    options.setDefaultFlowStyle(DumperOptions.FlowStyle.BLOCK);
    options.setAllowUnicode(true);
    options.setSplitLines(false);
    // The same value in two places is written out twice.
    options.setDereferenceAliases(true);
    return new Yaml(options).dump(new PackWriter(pack).root());
  }

  private Map<String, Object> root() {
    Map<String, Object> m = new LinkedHashMap<>();
    m.put("format", Pack.FORMAT);
    m.put("languages", pack.languages());
    m.put("printed", pack.printed());
    String glossary = pack.glossary();
    if (glossary != null) {
      m.put("glossary", glossary);
    }
    m.put("fields", each(pack.fields(), PackWriter::words));
    m.put("paper", paper(pack.paper()));
    m.put("margins", margins(pack.margins()));
    m.put("fonts", pack.fonts());
    put(m, "header", pack.header(), PackWriter::band);
    put(m, "foot", pack.foot(), PackWriter::band);
    if (!pack.sheets().isEmpty()) {
      m.put("sheets", each(pack.sheets(), PackWriter::sheet));
    }
    put(m, "workbook", pack.workbook(), PackWriter::workbook);
    m.put("one-scale", pack.oneScale());
    put(m, "round-scales", pack.rounding(), PackWriter::rounding);
    lineWeights(pack, m);
    put(m, "measurements", pack.measurements(), PackWriter::measurements);
    put(m, "samples", pack.samples(), PackWriter::samples);
    put(m, "colourways", pack.colourways(), PackWriter::colourways);
    if (!pack.materials().isEmpty()) {
      m.put("materials", each(pack.materials(), PackWriter::material));
    }
    if (!pack.history().log().isEmpty()) {
      m.put("log", pack.history().log().stream().map(PackWriter::logEntry).toList());
    }
    m.put("retired", pack.retired());
    return m;
  }

  private static Map<String, Object> logEntry(LogEntry entry) {
    Map<String, Object> m = new LinkedHashMap<>();
    m.put("revision", entry.revision());
    m.put("date", entry.date());
    m.put("by", entry.by());
    m.put("sheet", entry.sheet());
    m.put("what", entry.what());
    return m;
  }

  private static Map<String, Object> rounding(PackRounding rounding) {
    Map<String, Object> m = new LinkedHashMap<>();
    List<Object> series = new ArrayList<>();
    for (double scale : rounding.series()) {
      series.add(scale >= 1 ? Spelled.number(scale) + ":1" : "1:" + Spelled.number(1 / scale));
    }
    if (!series.isEmpty()) {
      m.put("series", series);
    }
    m.put("most", Spelled.number(100 * rounding.most()) + "%");
    return m;
  }

  private static Map<String, Object> workbook(PackWorkbook workbook) {
    Map<String, Object> m = new LinkedHashMap<>();
    m.put("file", workbook.file());
    m.put("worksheets", each(workbook.worksheets(), PackWriter::worksheet));
    return m;
  }

  private static Map<String, Object> worksheet(PackWorksheet w) {
    Map<String, Object> m = new LinkedHashMap<>();
    m.put("worksheet", w.name());
    m.put("windows", w.windows());
    m.put("labelled", w.labelled());
    m.put("flats", each(w.flats(), PackWriter::flat));
    return m;
  }

  private static Map<String, Object> band(PackBand band) {
    Map<String, Object> m = new LinkedHashMap<>();
    grid(m, band.grid());
    m.put("cells", each(band.cells(), PackWriter::cell));
    return m;
  }

  private static void grid(Map<String, Object> m, PackGrid grid) {
    m.put("columns", grid.columns().stream().map(Spelled::track).toList());
    m.put("rows", grid.rows().stream().map(Spelled::track).toList());
    m.put("areas", grid.areas());
  }

  private static Map<String, Object> sheet(PackSheet s) {
    Map<String, Object> m = new LinkedHashMap<>();
    m.put("name", words(s.name()));
    put(m, "paper", s.paper(), PackWriter::paper);
    put(m, "margins", s.margins(), PackWriter::margins);
    grid(m, s.grid());
    m.put("cells", each(s.cells(), PackWriter::cell));
    m.put("tables", each(s.tables(), PackWriter::table));
    m.put("windows", each(s.windows(), PackWriter::window));
    m.put("flats", each(s.flats(), PackWriter::flat));
    put(m, "check", s.check(), c -> c);
    if (!s.photographs().isEmpty()) {
      m.put("photographs", s.photographs());
    }
    if (s.further()) {
      m.put("further", true);
    }
    if (s.leaders() != PackLeaders.AUTO) {
      m.put("leaders", Spelled.word(s.leaders()));
    }
    m.put("rules", rules(s.rules()));
    put(m, "gap", s.gap(), Spelled::length);
    put(m, "clearance", s.clearance(), Spelled::length);
    return m;
  }

  private static Map<String, Object> rules(Set<LeadRule> rules) {
    Map<String, Object> m = new LinkedHashMap<>();
    for (LeadRule rule : LeadRule.values()) {
      m.put(Spelled.word(rule), rules.contains(rule));
    }
    return m;
  }

  private static Map<String, Object> cell(PackCell c) {
    Map<String, Object> m = new LinkedHashMap<>();
    m.put("caption", words(c.caption()));
    if (c.box() != null) {
      m.put("box", Spelled.word(c.box()));
    } else if (c.picture() != null) {
      m.put("picture", c.picture());
    } else {
      m.put("text", words(c.text()));
    }
    if (!c.size().equals(Lettering.VALUE)) {
      m.put("size", Spelled.length(c.size()));
    }
    if (!c.least().equals(Lettering.CAPTION)) {
      m.put("least", Spelled.length(c.least()));
    }
    if (c.align() != TextBlock.Align.LEFT) {
      m.put("align", Spelled.word(c.align()));
    }
    put(m, "stand", c.stand(), Spelled::word);
    return m;
  }

  private static Map<String, Object> window(PackWindow window) {
    Map<String, Object> m = new LinkedHashMap<>();
    List<Object> corners = new ArrayList<>();
    for (PackWindow.Corner corner : window.corners()) {
      Map<String, Object> c = new LinkedHashMap<>();
      c.put("at", Spelled.word(corner.at()));
      c.put("width", Spelled.length(corner.width()));
      c.put("height", Spelled.length(corner.height()));
      c.putAll(cell(corner.cell()));
      corners.add(c);
    }
    m.put("corners", corners);
    return m;
  }

  private static Map<String, Object> table(PackTable t) {
    Map<String, Object> m = new LinkedHashMap<>();
    boolean made = t.made();
    put(m, "check", t.check(), Spelled::word);
    put(m, "revisions", t.revisions(), Spelled::word);
    listed(m, "measures", t.measures());
    listed(m, "colourways", t.colourways());
    listed(m, "materials", t.materials());
    if (!made) {
      m.put("columns", t.columns().stream().map(PackWriter::column).toList());
    }
    if (!made && t.csv() == null) {
      m.put(
          "rows", t.rows().stream().map(r -> r.stream().map(PackWriter::words).toList()).toList());
    } else if (!made) {
      m.put("csv", t.csv());
    }
    m.put("sample", t.sample());
    m.put("size", Spelled.length(t.size()));
    m.put("least", Spelled.length(t.least()));
    m.put("window-row", Spelled.length(t.windowRow()));
    return m;
  }

  private static Map<String, Object> measurements(PackMeasurements list) {
    Map<String, Object> m = new LinkedHashMap<>();
    m.put("unit", list.unit());
    m.put("shown", list.shown());
    m.put("round", list.round());
    m.put(
        "sizes",
        list.sizes().size() == 1 && list.sizes().containsKey("")
            ? list.sizes().get("")
            : list.sizes());
    m.put("sample", list.sample());
    m.put("check-drawings", list.checkDrawings());
    if (list.csv() != null) {
      m.put("csv", list.csv());
    } else if (list.workbook() != null) {
      m.put("workbook", list.workbook());
      m.put("range", list.range());
    } else {
      m.put("points", each(list.points(), PackWriter::measure));
    }
    return m;
  }

  private static Map<String, Object> measure(PackMeasurements.Point p) {
    Map<String, Object> m = new LinkedHashMap<>();
    m.put("name", words(p.name()));
    m.put("how", words(p.how()));
    m.put("measured", p.measured());
    m.put("tolerance", p.tolerance());
    m.put("value", p.value());
    if (!p.grade().isEmpty()) {
      String one = p.grade().get("");
      m.put("grade", one == null || p.grade().size() > 1 ? rules(p.grade()) : one);
    }
    m.put("values", p.values());
    return m;
  }

  private static void listed(Map<String, Object> m, String key, List<String> names) {
    if (!names.isEmpty()) {
      m.put(key, names);
    }
  }

  private static Map<String, Object> colourways(PackColourways c) {
    Map<String, Object> m = new LinkedHashMap<>();
    m.put("ways", each(c.ways(), PackWriter::words));
    m.put("colours", each(c.colours(), PackWriter::colour));
    m.put("parts", each(c.parts(), PackWriter::part));
    m.put("printed", c.printed().stream().map(Spelled::word).toList());
    return m;
  }

  private static Map<String, Object> colour(PackColourways.Colour c) {
    Map<String, Object> m = new LinkedHashMap<>();
    m.put("name", words(c.name()));
    m.put("code", c.code());
    m.put("reference", words(c.reference()));
    put(m, "screen", c.screen(), s -> s);
    put(m, "lab", c.lab(), lab -> List.of(lab.l(), lab.a(), lab.b()));
    return m;
  }

  private static Map<String, Object> part(PackColourways.Part p) {
    Map<String, Object> m = new LinkedHashMap<>();
    m.put("name", words(p.name()));
    m.put("fills", p.fills());
    m.put("lines", lines(p.lines()));
    m.put("colours", p.colours());
    m.put("reference", words(p.reference()));
    return m;
  }

  private static Map<String, Object> material(PackMaterial material) {
    Map<String, Object> m = new LinkedHashMap<>();
    m.put("name", words(material.name()));
    m.put("shown", material.shown());
    m.put("supplier", words(material.supplier()));
    m.put("reference", material.reference());
    m.put("composition", words(material.composition()));
    m.put("width", words(material.width()));
    m.put("size", words(material.size()));
    m.put("placement", words(material.placement()));
    m.put("consumption", words(material.consumption()));
    put(m, "waste", material.waste(), Spelled::word);
    m.put("part", material.part());
    return m;
  }

  private static Map<String, Object> samples(PackSamples samples) {
    Map<String, Object> m = new LinkedHashMap<>();
    m.put("files", samples.files().stream().map(PackWriter::source).toList());
    m.put("checks", each(samples.checks(), PackWriter::check));
    return m;
  }

  private static Object source(PackSamples.Source source) {
    return source.ranges().isEmpty()
        ? source.file()
        : Map.of("workbook", source.file(), "range", source.ranges());
  }

  private static Map<String, Object> check(PackSamples.Check c) {
    Map<String, Object> m = new LinkedHashMap<>();
    m.put("stage", words(c.stage()));
    m.put("round", c.round());
    m.put("colour", words(c.colour()));
    m.put("received", c.received());
    m.put("measured", c.measured());
    put(m, "wash", c.wash(), Spelled::word);
    m.put("substitutions", words(c.substitutions()));
    put(m, "verdict", c.verdict(), Spelled::word);
    m.put("by", c.by());
    m.put("sizes", c.sizes());
    return m;
  }

  private static Map<String, Object> rules(Map<String, String> grade) {
    Map<String, Object> m = new LinkedHashMap<>();
    grade.forEach((group, rule) -> m.put(group.isEmpty() ? MeasurementsNode.OTHERS : group, rule));
    return m;
  }

  private static Map<String, Object> column(PackColumn c) {
    Map<String, Object> m = new LinkedHashMap<>();
    m.put("heading", words(c.heading()));
    put(m, "width", c.width(), Spelled::track);
    put(m, "align", c.align(), Spelled::word);
    m.put("windows", c.windows());
    m.put("marks", c.marks());
    return m;
  }

  private static Map<String, Object> flat(PackFlat f) {
    Map<String, Object> m = new LinkedHashMap<>();
    m.put("file", f.file());
    m.put("role", Spelled.word(f.role()));
    m.put("window", f.windows());
    put(m, "group", f.scaling().group(), g -> g);
    put(m, "ratio", f.scaling().ratio(), r -> r);
    put(m, "share", f.scaling().share(), r -> r);
    put(m, "unit", f.scaling().unit(), Spelled::length);
    put(m, "level", f.level(), l -> l);
    put(m, "least", f.least(), Spelled::length);
    put(m, "greatest", f.greatest(), Spelled::length);
    m.put("true-size", f.trueSize());
    put(m, "caption", f.caption(), PackWriter::words);
    m.put("note", words(f.note()));
    if (f.held().any()) {
      m.put("held", held(f.held()));
    }
    PackColouring colouring = f.colouring();
    m.put("fills", colouring.fills());
    m.put("lines", lines(colouring.lines()));
    m.put("low-contrast", colouring.lowContrast());
    m.put("colourways", colouring.colourways());
    m.put("hide", f.hidden());
    put(m, "line-weight", f.lineWeight(), Spelled::length);
    put(m, "outline", f.outline(), o -> o);
    m.put("layers", f.layers());
    m.put("points", each(f.spots().points(), PackWriter::point));
    m.put("callouts", each(f.spots().callouts(), PackWriter::callout));
    m.put("dimensions", each(f.spots().dimensions(), PackWriter::dimension));
    return m;
  }

  private static Object lines(Map<String, List<String>> lines) {
    boolean placed = lines.values().stream().anyMatch(areas -> !areas.isEmpty());
    return placed ? lines : List.copyOf(lines.keySet());
  }

  private static void lineWeights(Pack pack, Map<String, Object> m) {
    Length all = pack.lineWeights().get(Pack.ALL_ROLES);
    if (all != null) {
      m.put("line-weight", Spelled.length(all));
    } else if (!pack.lineWeights().isEmpty()) {
      Map<String, Object> roles = new LinkedHashMap<>();
      pack.lineWeights().forEach((role, width) -> roles.put(role, Spelled.length(width)));
      m.put("line-weight", roles);
    }
  }

  private static Map<String, Object> point(PackPoint p) {
    Map<String, Object> m = new LinkedHashMap<>();
    put(m, "element", p.element(), e -> e);
    put(m, "x", p.at(), at -> at.x());
    put(m, "y", p.at(), at -> at.y());
    put(m, "across", p.share(), share -> percent(share.x()));
    put(m, "down", p.share(), share -> percent(share.y()));
    return m;
  }

  private static String percent(double share) {
    return BigDecimal.valueOf(share).movePointRight(2).stripTrailingZeros().toPlainString() + "%";
  }

  private static Map<String, Object> dimension(PackDimension d) {
    Map<String, Object> m = new LinkedHashMap<>();
    m.put("from", d.from());
    if (d.edge().isEmpty()) {
      m.put("to", d.to());
    } else {
      m.put("edge", d.edge());
    }
    if (d.along().isEmpty()) {
      m.put("run", Spelled.word(d.run()));
    } else {
      m.put("along", d.along());
    }
    put(m, "beside", d.beside(), b -> b);
    return m;
  }

  private static Map<String, Object> callout(PackCallout c) {
    Map<String, Object> m = new LinkedHashMap<>();
    m.put("point", c.points().size() == 1 ? c.points().get(0) : c.points());
    if (!c.mark().isEmpty()) {
      m.put("mark", c.mark());
    }
    if (!c.detail().isEmpty()) {
      m.put("detail", c.detail());
    }
    put(m, "region", c.region(), r -> r);
    put(m, "end", c.end(), Spelled::word);
    put(m, "text", c.text(), PackWriter::words);
    return m;
  }

  private static Map<String, Object> held(Held held) {
    Map<String, Object> m = new LinkedHashMap<>();
    put(m, "left", held.left(), Spelled::length);
    put(m, "top", held.top(), Spelled::length);
    put(m, "scale", held.scale(), s -> s);
    return m;
  }

  private static Object paper(PaperSize paper) {
    PaperSize named = PaperSize.named(paper.name()).orElse(null);
    if (named != null && paper.equals(named.landscape())) {
      return paper.name() + " landscape";
    }
    if (named != null && paper.equals(named.portrait())) {
      return paper.name() + " portrait";
    }
    Map<String, Object> m = new LinkedHashMap<>();
    m.put("width", Spelled.length(paper.width()));
    m.put("height", Spelled.length(paper.height()));
    return m;
  }

  private static Object margins(Margins margins) {
    Map<String, Object> m = new LinkedHashMap<>();
    m.put("top", Spelled.length(margins.top()));
    m.put("right", Spelled.length(margins.right()));
    m.put("bottom", Spelled.length(margins.bottom()));
    m.put("left", Spelled.length(margins.left()));
    return m;
  }

  private static Object words(Words words) {
    return words.plain() ? words.byLanguage().getOrDefault("", "") : words.byLanguage();
  }

  private static <V> Map<String, Object> each(Map<String, V> map, Function<V, Object> writer) {
    Map<String, Object> written = new LinkedHashMap<>();
    map.forEach((key, value) -> written.put(key, writer.apply(value)));
    return written;
  }

  private static <V> void put(
      Map<String, Object> m, String key, @Nullable V value, Function<V, Object> writer) {
    if (value != null) {
      m.put(key, writer.apply(value));
    }
  }
}
