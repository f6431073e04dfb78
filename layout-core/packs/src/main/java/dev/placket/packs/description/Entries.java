package dev.placket.packs.description;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Keys with values of which every key is known; any other is a slip. */
final class Entries {
  private final TextPosition place;
  private final String what;
  private final Map<String, PackNode> values;
  private final Faults faults;

  /**
   * Reads keys.
   *
   * @param what what messages call the whole
   * @param known the keys there may be
   */
  Entries(PackNode node, String what, List<String> known, Faults faults) {
    this.place = node.mark();
    this.what = what;
    this.faults = faults;
    if (node instanceof PackNode.Keys keys) {
      values = keys.values();
      keys.places()
          .forEach(
              (key, mark) -> {
                if (!known.contains(key)) {
                  faults.unknown(mark, "the key", key, known);
                }
              });
    } else {
      values = Map.of();
      if (!(node instanceof PackNode.Text t && t.value().isEmpty())) {
        faults.add(place, node.what(), what + ": keys with values, such as " + known.get(0));
      }
    }
  }

  @Nullable PackNode get(String key) {
    return values.get(key);
  }

  /** A value that has to be there. */
  @Nullable PackNode need(String key) {
    PackNode node = values.get(key);
    if (node == null) {
      faults.add(place, what + " without " + key, "the key " + key);
    }
    return node;
  }
}
