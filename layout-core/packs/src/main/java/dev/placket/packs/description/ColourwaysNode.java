package dev.placket.packs.description;

import dev.placket.packs.description.PackColourways.Printed;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads the colourways and the materials of a description. */
final class ColourwaysNode {
  private static final List<String> KEYS = List.of("ways", "colours", "parts", "printed");
  private static final List<String> COLOUR = List.of("name", "code", "reference", "screen", "lab");
  private static final List<String> PART =
      List.of("name", "fills", "lines", "colours", "reference");
  private static final List<String> MATERIAL =
      List.of(
          "name",
          "shown",
          "supplier",
          "reference",
          "composition",
          "width",
          "size",
          "placement",
          "consumption",
          "waste",
          "part");
  private static final Map<String, Printed> PRINTED = Spelled.words(Printed.values());
  private static final Map<String, PackMaterial.Waste> WASTE =
      Spelled.words(PackMaterial.Waste.values());

  private final NodeValues values;

  ColourwaysNode(NodeValues values) {
    this.values = values;
  }

  @Nullable PackColourways colourways(@Nullable PackNode node) {
    if (node == null) {
      return null;
    }
    Entries e = new Entries(node, "the colourways", KEYS, values.faults());
    List<Printed> printed = new ArrayList<>();
    PackNode print = e.get("printed");
    List<PackNode> words =
        print instanceof PackNode.Items items
            ? items.items()
            : print == null ? List.of() : List.of(print);
    for (PackNode word : words) {
      Printed one = values.choice(word, PRINTED, "what is printed of a colour");
      if (one != null) {
        printed.add(one);
      }
    }
    return new PackColourways(
        values.named(e.need("ways"), "its name", (code, n) -> values.words(n)),
        values.named(e.need("colours"), "a colour", this::colour),
        values.named(e.need("parts"), "its colours", this::part),
        printed.isEmpty() ? PackColourways.USUAL_PRINT : printed);
  }

  private PackColourways.Colour colour(String word, PackNode node) {
    if (node instanceof PackNode.Text text && !text.value().isEmpty()) {
      return new PackColourways.Colour(Words.of(text.value()), "", Words.NONE, null, null);
    }
    Entries e = new Entries(node, "colour " + word, COLOUR, values.faults());
    PackNode screen = e.get("screen");
    PackNode lab = e.get("lab");
    if (screen != null && lab != null) {
      values.faults().add(lab.mark(), "both screen and lab", "one of the two");
    }
    return new PackColourways.Colour(
        values.words(e.get("name"), Words.of(word)),
        values.text(e.get("code"), ""),
        values.words(e.get("reference"), Words.NONE),
        screen == null ? null : values.colour(screen),
        lab(lab));
  }

  private PackColourways.@Nullable Lab lab(@Nullable PackNode node) {
    if (node == null) {
      return null;
    }
    List<Double> read =
        values.list(node, "lightness, a and b, as in [53.2, 80.1, 67.2]", n -> signed(n));
    boolean sane =
        read.size() == 3
            && read.get(0) >= 0
            && read.get(0) <= 100
            && Math.abs(read.get(1)) <= 128
            && Math.abs(read.get(2)) <= 128;
    if (!sane) {
      values
          .faults()
          .add(
              node.mark(),
              node.what(),
              "lightness from 0 to 100, a and b from -128 to 128, as in [53.2, 80.1, 67.2]");
      return null;
    }
    return new PackColourways.Lab(read.get(0), read.get(1), read.get(2));
  }

  private @Nullable Double signed(PackNode node) {
    try {
      double value = Double.parseDouble(values.text(node, ""));
      return Double.isFinite(value) ? value : null;
    } catch (NumberFormatException e) {
      return null;
    }
  }

  private PackColourways.Part part(String name, PackNode node) {
    Entries e = new Entries(node, "part " + name, PART, values.faults());
    return new PackColourways.Part(
        values.words(e.get("name"), Words.of(name)),
        values.oneOrMore(e.get("fills"), "names of areas"),
        FlatReader.lines(values, e.get("lines")),
        values.oneOrMore(e.need("colours"), "colours, one for each colourway"),
        values.words(e.get("reference"), Words.NONE));
  }

  PackMaterial material(String name, PackNode node) {
    Entries e = new Entries(node, "material " + name, MATERIAL, values.faults());
    return new PackMaterial(
        values.words(e.need("name"), Words.NONE),
        values.text(e.get("shown"), ""),
        values.words(e.get("supplier"), Words.NONE),
        values.text(e.get("reference"), ""),
        values.words(e.get("composition"), Words.NONE),
        values.words(e.get("width"), Words.NONE),
        values.words(e.get("size"), Words.NONE),
        values.words(e.get("placement"), Words.NONE),
        values.words(e.get("consumption"), Words.NONE),
        values.choice(e.get("waste"), WASTE, "whether waste is in the consumption"),
        values.text(e.get("part"), ""));
  }
}
