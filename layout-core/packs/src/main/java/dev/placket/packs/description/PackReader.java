package dev.placket.packs.description;

import dev.placket.layout.flat.Role;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.units.Length;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.Place;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads a description: YAML in UTF-8, whose form is {@code placket-pack-1.schema.json}. */
public final class PackReader {
  /** Larger files are refused. */
  private static final int MOST_BYTES = 5_000_000;

  private static final List<String> KEYS =
      List.of(
          "format",
          "languages",
          "printed",
          "glossary",
          "fields",
          "paper",
          "margins",
          "fonts",
          "header",
          "foot",
          "sheets",
          "workbook",
          "one-scale",
          "round-scales",
          "line-weight",
          "measurements",
          "samples",
          "colourways",
          "materials",
          "log",
          "retired");
  private static final List<String> ROLES =
      Arrays.stream(Role.values()).map(Spelled::word).toList();

  /** In millimetres. */
  static final double LEAST_LINE = 0.001;

  private static final List<String> SIDES = List.of("top", "right", "bottom", "left");
  private static final List<String> SIZES = List.of("width", "height");

  private final Faults faults;
  private final NodeValues values;
  private final FlatAgain again = new FlatAgain();

  private PackReader(Faults faults) {
    this.faults = faults;
    this.values = new NodeValues(faults);
  }

  /**
   * Reads a file.
   *
   * @return what it says, with the slips noted
   * @throws Refusal if it cannot be read or its YAML is broken
   */
  public static Described read(Path file) throws Refusal {
    byte[] bytes;
    try (InputStream in = Files.newInputStream(file)) {
      bytes = in.readNBytes(MOST_BYTES + 1);
    } catch (IOException e) {
      throw Refusal.input(
          Fault.unreadable(file, "cannot be opened")
              .remedy("check that it exists and is readable"));
    }
    return read(file, bytes);
  }

  /** Reads the bytes of a file; see {@link #read(Path)}. */
  public static Described read(Path file, byte[] bytes) throws Refusal {
    if (bytes.length > MOST_BYTES) {
      throw Refusal.input(
          Fault.limit(file, "has more than " + MOST_BYTES + " bytes, the limit")
              .remedy("split the description"));
    }
    Faults faults = new Faults(file.toString());
    String text = text(file, bytes);
    PackNode root = YamlTree.read(text, faults);
    if (root == null) {
      faults.refuse();
      throw new IllegalStateException("no description and no slip");
    }
    PackReader reader = new PackReader(faults);
    Pack pack = reader.pack(root);
    return new Described(file, pack, reader.again.in(Places.of(root)), faults);
  }

  private static String text(Path file, byte[] bytes) throws Refusal {
    ByteBuffer buffer = ByteBuffer.wrap(bytes);
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(buffer).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      int line = 1;
      for (int i = 0; i < buffer.position(); i++) {
        line += bytes[i] == '\n' ? 1 : 0;
      }
      throw Refusal.input(
          Fault.content(file, "is not in UTF-8 from here on")
              .at(Place.line(line))
              .remedy("save it as UTF-8"));
    }
  }

  private Map<String, Length> lineWeights(@Nullable PackNode node) {
    if (node instanceof PackNode.Keys) {
      Entries e = new Entries(node, "line weights", ROLES, faults);
      return values.named(
          node,
          "a width",
          (role, width) -> e.get(role) == null ? null : values.length(width, LEAST_LINE));
    }
    Length all = values.length(node, LEAST_LINE);
    return all == null ? Map.of() : Map.of(Pack.ALL_ROLES, all);
  }

  private Pack pack(PackNode root) {
    Entries e = new Entries(root, "the description", KEYS, faults);
    format(e.need("format"));
    List<String> written = values.oneOrMore(e.get("languages"), "languages, as in en");
    List<String> languages = written.isEmpty() ? List.of("en") : written;
    values.setLanguages(languages);
    List<String> printed = printed(e.get("printed"), languages);
    String glossary = values.text(e.get("glossary"), "");
    SheetReader sheets = new SheetReader(values, this, again);
    PackWorkbook workbook = new WorksheetNode(values).workbook(e.get("workbook"));
    return new Pack(
        languages,
        printed,
        glossary.isEmpty() ? null : glossary,
        values.named(e.get("fields"), "a value", (name, n) -> values.words(n)),
        paper(e.get("paper"), Pack.USUAL_PAPER),
        margins(e.get("margins"), Pack.USUAL_MARGINS),
        values.oneOrMore(e.get("fonts"), "TrueType files"),
        sheets.band(e.get("header"), "the header"),
        sheets.band(e.get("foot"), "the foot"),
        values.named(
            workbook == null ? e.need("sheets") : e.get("sheets"), "a sheet", sheets::sheet),
        workbook,
        values.oneOrMore(e.get("one-scale"), "scale groups"),
        new RoundingNode(values).rounding(e.get("round-scales")),
        lineWeights(e.get("line-weight")),
        new MeasurementsNode(values).list(e.get("measurements")),
        new SamplesNode(values).samples(e.get("samples")),
        new ColourwaysNode(values).colourways(e.get("colourways")),
        values.named(e.get("materials"), "its name", new ColourwaysNode(values)::material),
        new LogNode(values).history(e.get("log")),
        values.oneOrMore(e.get("retired"), "identifiers"));
  }

  private List<String> printed(@Nullable PackNode node, List<String> languages) {
    List<String> printed = values.oneOrMore(node, "languages, as in en");
    for (String each : printed) {
      if (node != null && !languages.contains(each)) {
        faults.unknown(node.mark(), "the language", each, languages);
      }
    }
    return printed.isEmpty() ? languages : printed;
  }

  private void format(@Nullable PackNode node) {
    String stated = values.text(node, Pack.FORMAT);
    if (!stated.equals(Pack.FORMAT) && node instanceof PackNode.Text) {
      faults.add(node.mark(), "the format '" + stated + "'", Pack.FORMAT);
    }
  }

  /** A paper as {@code A4}, {@code Letter portrait} or by its width and height. */
  PaperSize paper(@Nullable PackNode node, PaperSize otherwise) {
    if (node == null) {
      return otherwise;
    }
    if (node instanceof PackNode.Keys) {
      Entries e = new Entries(node, "paper", SIZES, faults);
      Length width = values.length(e.need("width"), 10);
      Length height = values.length(e.need("height"), 10);
      if (width == null || height == null) {
        return otherwise;
      }
      PaperSize custom = new PaperSize("custom", width, height);
      String over = PaperChoice.over(custom);
      if (over != null) {
        faults.add(node.mark(), "paper of which " + over, "smaller paper");
      }
      return custom;
    }
    String[] words = values.text(node, "").strip().split("\\s+");
    PaperSize named = PaperSize.named(words[0]).orElse(null);
    List<String> known = new ArrayList<>();
    PaperSize.NAMED.forEach(p -> known.add(p.name()));
    if (named == null) {
      faults.unknown(node.mark(), "the paper", words[0], known);
      return otherwise;
    }
    String way = words.length == 1 ? "landscape" : words[1].toLowerCase(Locale.ROOT);
    if (words.length > 2 || !List.of("landscape", "portrait").contains(way)) {
      faults.unknown(node.mark(), "the way up", way, List.of("landscape", "portrait"));
    }
    return way.equals("portrait") ? named.portrait() : named.landscape();
  }

  Margins margins(@Nullable PackNode node, Margins otherwise) {
    if (node == null) {
      return otherwise;
    }
    if (node instanceof PackNode.Keys) {
      Entries e = new Entries(node, "margins", SIDES, faults);
      Map<String, Length> sides = new LinkedHashMap<>();
      for (String side : SIDES) {
        Length read = values.length(e.need(side), 0);
        sides.put(side, read == null ? Length.mm(10) : read);
      }
      List<Length> l = List.copyOf(sides.values());
      return new Margins(l.get(0), l.get(1), l.get(2), l.get(3));
    }
    Length each = values.length(node, 0);
    return each == null ? otherwise : Margins.all(each);
  }
}
