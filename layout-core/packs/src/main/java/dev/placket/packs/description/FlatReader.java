package dev.placket.packs.description;

import dev.placket.layout.flat.Held;
import dev.placket.layout.flat.Role;
import dev.placket.layout.units.Length;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads a flat. */
final class FlatReader {
  private static final List<String> KEYS =
      List.of(
          "file",
          "role",
          "window",
          "group",
          "ratio",
          "share",
          "unit",
          "level",
          "least",
          "greatest",
          "true-size",
          "caption",
          "note",
          "held",
          "fills",
          "lines",
          "low-contrast",
          "colourways",
          "hide",
          "line-weight",
          "outline",
          "layers",
          "points",
          "callouts",
          "dimensions");
  private static final List<String> HELD = List.of("left", "top", "scale");
  private static final Map<String, Role> ROLES = Spelled.words(Role.values());

  private final NodeValues values;

  FlatReader(NodeValues values) {
    this.values = values;
  }

  PackFlat flat(String id, PackNode node) {
    Entries e = new Entries(node, "flat " + id, KEYS, values.faults());
    Role role = values.choice(e.need("role"), ROLES, "the role");
    String level = values.text(e.get("level"), "");
    String group = values.text(e.get("group"), "");
    String outline = values.text(e.get("outline"), "");
    return new PackFlat(
        values.text(e.need("file"), ""),
        role == null ? Role.DETAIL : role,
        values.oneOrMore(e.get("window"), "windows"),
        new PackFlat.Scaling(
            group.isEmpty() ? null : group,
            values.number(e.get("ratio")),
            values.number(e.get("share")),
            values.length(e.get("unit"), 1e-9)),
        values.length(e.get("least"), 0),
        values.length(e.get("greatest"), 0.001),
        values.flag(e.get("true-size"), false),
        values.words(e.get("caption")),
        values.words(e.get("note"), Words.NONE),
        level.isEmpty() ? null : level,
        held(e.get("held")),
        colouring(e),
        values.oneOrMore(e.get("hide"), "names of parts of the drawing"),
        values.length(e.get("line-weight"), PackReader.LEAST_LINE),
        outline.isEmpty() ? null : outline,
        values.oneOrMore(e.get("layers"), "names of layers"),
        new SpotReader(values).spots(e.get("points"), e.get("callouts"), e.get("dimensions")));
  }

  private PackColouring colouring(Entries e) {
    return new PackColouring(
        values.named(e.get("fills"), "a colour", (name, n) -> values.colour(n)),
        lines(values, e.get("lines")),
        values.oneOrMore(e.get("low-contrast"), "names of areas and groups of lines"),
        values.oneOrMore(e.get("colourways"), "codes of colourways, or all"));
  }

  /** Groups of lines, each with the areas that it lies on where these are named. */
  static Map<String, List<String>> lines(NodeValues values, @Nullable PackNode node) {
    return node instanceof PackNode.Keys
        ? values.named(node, "areas", (name, n) -> values.oneOrMore(n, "names of areas"))
        : PackColouring.onAll(values.oneOrMore(node, "names of groups of lines"));
  }

  private Held held(@Nullable PackNode node) {
    if (node == null) {
      return Held.NOTHING;
    }
    Entries e = new Entries(node, "held", HELD, values.faults());
    Length left = values.length(e.get("left"), 0);
    Length top = values.length(e.get("top"), 0);
    return new Held(left, top, values.number(e.get("scale")));
  }
}
