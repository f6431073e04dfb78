package dev.placket.packs.issue;

import java.util.List;
import java.util.Set;

/** Fields of which each revision has its own: that they differ changes nothing of the garment. */
final class OwnFields {
  /** Their names in {@code fit.json}; the title is made of others. */
  static final Set<String> NAMES = Set.of("title", "revision", "date");

  private OwnFields() {}

  /** Whether a text differs by more than the revision and the date that are filled into it. */
  static boolean isOther(JsonTree before, JsonTree after, String was, String is) {
    String filled = was;
    for (String field : List.of("revision", "date")) {
      String own = before.get("pack").get(field).text();
      if (!own.isEmpty()) {
        filled = filled.replace(own, after.get("pack").get(field).text());
      }
    }
    return !was.equals(is) && !filled.equals(is);
  }
}
