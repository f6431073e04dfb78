package dev.placket.packs.description;

import dev.placket.packs.sample.SampleVerdict;
import dev.placket.packs.sample.Wash;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads the samples of a description. */
final class SamplesNode {
  private static final List<String> KEYS = List.of("files", "checks");
  private static final List<String> SOURCE = List.of("workbook", "range");
  private static final List<String> CHECK =
      List.of(
          "stage",
          "round",
          "colour",
          "received",
          "measured",
          "wash",
          "substitutions",
          "verdict",
          "by",
          "sizes");
  private static final Map<String, Wash> WASHES = Spelled.words(Wash.values());
  private static final Map<String, SampleVerdict> VERDICTS = Spelled.words(SampleVerdict.values());

  private final NodeValues values;

  SamplesNode(NodeValues values) {
    this.values = values;
  }

  @Nullable PackSamples samples(@Nullable PackNode node) {
    if (node == null) {
      return null;
    }
    Entries e = new Entries(node, "the samples", KEYS, values.faults());
    PackNode files = e.get("files");
    return new PackSamples(
        files == null || files instanceof PackNode.Items
            ? values.list(files, "files", this::source)
            : List.of(source(files)),
        values.named(e.need("checks"), "its stage", this::check));
  }

  private PackSamples.Source source(PackNode node) {
    if (node instanceof PackNode.Text text) {
      return new PackSamples.Source(text.value(), List.of());
    }
    Entries e = new Entries(node, "the file", SOURCE, values.faults());
    PackNode range = e.need("range");
    List<String> ranges = values.oneOrMore(range, "ranges, as in fit-2!A1:K20");
    if (range != null && ranges.isEmpty()) {
      values.faults().add(range.mark(), "no range", "one range or more");
    }
    return new PackSamples.Source(values.text(e.need("workbook"), ""), ranges);
  }

  private PackSamples.Check check(String name, PackNode node) {
    Entries e = new Entries(node, "sample " + name, CHECK, values.faults());
    return new PackSamples.Check(
        values.words(e.need("stage"), Words.NONE),
        values.text(e.get("round"), ""),
        values.words(e.get("colour"), Words.NONE),
        values.text(e.get("received"), ""),
        values.text(e.get("measured"), ""),
        values.choice(e.get("wash"), WASHES, "the wash"),
        values.words(e.get("substitutions"), Words.NONE),
        values.choice(e.get("verdict"), VERDICTS, "the verdict"),
        values.text(e.get("by"), ""),
        values.oneOrMore(e.get("sizes"), "sizes"));
  }
}
