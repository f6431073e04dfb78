package dev.placket.packs.description;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads the round scales of a description. */
final class RoundingNode {
  private static final List<String> KEYS = List.of("series", "most");
  private static final Pattern SCALE =
      Pattern.compile("([0-9]{1,6}(?:\\.[0-9]{1,6})?) ?: ?([0-9]{1,6}(?:\\.[0-9]{1,6})?)");
  private static final Pattern SHARE = Pattern.compile("([0-9]{1,2}(?:\\.[0-9]{1,6})?) ?%");

  private final NodeValues values;

  RoundingNode(NodeValues values) {
    this.values = values;
  }

  /** Null where no round scales are asked for. */
  @Nullable PackRounding rounding(@Nullable PackNode node) {
    if (node instanceof PackNode.Keys) {
      Entries e = new Entries(node, "round-scales", KEYS, values.faults());
      PackNode series = e.get("series");
      return new PackRounding(series == null ? List.of() : series(series), share(e.get("most")));
    }
    return values.flag(node, false) ? new PackRounding(List.of(), PackRounding.USUAL_SHARE) : null;
  }

  private List<Double> series(PackNode node) {
    List<Double> scales = new ArrayList<>();
    for (String text : values.oneOrMore(node, "scales in quotes, as in \"1:10\"")) {
      Matcher m = SCALE.matcher(text.strip());
      double over = m.matches() ? Double.parseDouble(m.group(1)) : 0;
      double under = m.matches() ? Double.parseDouble(m.group(2)) : 0;
      if (over > 0 && under > 0) {
        scales.add(over / under);
      } else {
        values
            .faults()
            .add(node.mark(), "the scale '" + text + "'", "a scale in quotes, as in \"1:10\"");
      }
    }
    return scales;
  }

  private double share(@Nullable PackNode node) {
    if (node == null) {
      return PackRounding.USUAL_SHARE;
    }
    Matcher m = SHARE.matcher(values.text(node, "").strip());
    double share = m.matches() ? Double.parseDouble(m.group(1)) / 100 : 0;
    if (share <= 0) {
      values.faults().add(node.mark(), node.what(), "a share of the scale, as in 20%");
      return PackRounding.USUAL_SHARE;
    }
    return share;
  }
}
