package dev.placket.benchmarks.pages;

import com.fasterxml.jackson.databind.JsonNode;
import dev.placket.benchmarks.pages.ReferencePage.Expected;
import dev.placket.benchmarks.pages.ReferencePage.Size;
import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads one sheet and says exactly where it is wrong. */
final class PageReader {
  private final String file;
  private final JsonNode page;
  private String place;

  PageReader(String file, int number, JsonNode page) {
    this.file = file;
    this.page = page;
    this.place = "sheet " + number;
  }

  ReferencePage read() {
    if (!page.isObject()) {
      throw wrong("is no JSON object", "write id, width, height, margin, gap, labelled, flats");
    }
    String id = id();
    place = place + " (" + id + ")";
    if (page.has("windows")) {
      throw wrong("has 'windows'", "leave them out: all that the margins leave is one window");
    }
    double width = positive("width");
    double height = positive("height");
    double margin = notNegative("margin");
    double gap = notNegative("gap");
    if (2 * margin >= Math.min(width, height)) {
      throw wrong("has no room inside its margin of " + margin, "take less than half a side");
    }
    return new ReferencePage(id, width, height, margin, gap, labelled(), flats(), expected());
  }

  private String id() {
    JsonNode id = page.get("id");
    if (id == null || !id.isTextual() || id.asText().isBlank()) {
      throw wrong("has no 'id'", "give it a text");
    }
    if (id.asText().chars().anyMatch(c -> c < ' ')) {
      throw wrong("has control characters in its 'id'", "give it plain text");
    }
    return id.asText();
  }

  private List<Rect> labelled() {
    List<Rect> boxes = new ArrayList<>();
    for (JsonNode each : array("labelled")) {
      String at = "labelled " + (boxes.size() + 1);
      double[] e = numbers(each, 4, at, "[left, top, right, bottom]");
      if (e[2] < e[0] || e[3] < e[1]) {
        throw wrong(at + " is " + each, "write [left, top, right, bottom], y down");
      }
      boxes.add(new Rect(e[0], e[1], e[2], e[3]));
    }
    return boxes;
  }

  private List<Size> flats() {
    List<Size> sizes = new ArrayList<>();
    for (JsonNode each : array("flats")) {
      String at = "flats " + (sizes.size() + 1);
      double[] e = numbers(each, 2, at, "[width, height]");
      if (!(e[0] > 0 && e[1] > 0)) {
        throw wrong(at + " is " + each, "both sides are above zero");
      }
      sizes.add(new Size(e[0], e[1]));
    }
    if (sizes.isEmpty()) {
      throw wrong("has no flats", "give one or more as [width, height]");
    }
    return sizes;
  }

  private @Nullable Expected expected() {
    if (absent("bestKnown") && absent("bound")) {
      return null;
    }
    double best = positive("bestKnown");
    double bound = absent("bound") ? Double.POSITIVE_INFINITY : positive("bound");
    return new Expected(best, bound, page.path("proven").asBoolean(false));
  }

  private boolean absent(String field) {
    return page.path(field).isMissingNode() || page.path(field).isNull();
  }

  private JsonNode array(String field) {
    JsonNode node = page.get(field);
    if (node == null || !node.isArray()) {
      throw wrong("has no list '" + field + "'", "write a JSON array, empty if there is nothing");
    }
    return node;
  }

  private double[] numbers(JsonNode node, int count, String at, String form) {
    double[] all = new double[count];
    boolean right = node.isArray() && node.size() == count;
    for (int i = 0; i < count && right; i++) {
      right = node.get(i).isNumber() && Double.isFinite(node.get(i).asDouble());
      all[i] = node.get(i).asDouble();
    }
    if (!right) {
      throw wrong(at + " is " + node, "write " + form + " in points");
    }
    return all;
  }

  private double positive(String field) {
    double number = number(field);
    if (!(number > 0)) {
      throw wrong("has '" + field + "' at " + number, "it must be above zero");
    }
    return number;
  }

  private double notNegative(String field) {
    double number = number(field);
    if (!(number >= 0)) {
      throw wrong("has '" + field + "' at " + number, "it must not be negative");
    }
    return number;
  }

  private double number(String field) {
    JsonNode node = page.get(field);
    if (node == null || !node.isNumber() || !Double.isFinite(node.asDouble())) {
      throw wrong("has no number '" + field + "' but " + node, "write a number in points");
    }
    return node.asDouble();
  }

  private PageException wrong(String what, String cure) {
    return new PageException(file + ": " + place + " " + what + "; " + cure);
  }
}
