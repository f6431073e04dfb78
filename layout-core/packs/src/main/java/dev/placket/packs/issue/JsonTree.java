package dev.placket.packs.issue;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import dev.placket.packs.json.PlainCharacters;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A JSON value as maps, lists and texts; numbers are texts as they are written, null is empty.
 *
 * @param value a map by names, a list, or a text
 */
record JsonTree(Object value) {
  private static final int DEEPEST = 50;

  /**
   * Reads a value.
   *
   * @throws IOException if it is no JSON, or nests too deeply
   */
  static JsonTree read(byte[] bytes) throws IOException {
    try (JsonParser json = PlainCharacters.factory().createParser(bytes)) {
      if (json.nextToken() == null) {
        throw new IOException("it is empty");
      }
      return new JsonTree(value(json, 0));
    }
  }

  private static Object value(JsonParser json, int depth) throws IOException {
    if (depth > DEEPEST) {
      throw new IOException("it nests too deeply");
    }
    JsonToken token = json.currentToken();
    if (token == JsonToken.START_OBJECT) {
      Map<String, Object> map = new LinkedHashMap<>();
      while (json.nextToken() == JsonToken.FIELD_NAME) {
        String name = json.currentName();
        json.nextToken();
        map.put(name, value(json, depth + 1));
      }
      return map;
    }
    if (token == JsonToken.START_ARRAY) {
      List<Object> list = new ArrayList<>();
      while (json.nextToken() != JsonToken.END_ARRAY) {
        list.add(value(json, depth + 1));
      }
      return list;
    }
    return token == JsonToken.VALUE_NULL || token == null ? "" : json.getText();
  }

  /** The value of a field; an empty text where there is none. */
  JsonTree get(String field) {
    Object found = value instanceof Map<?, ?> map ? map.get(field) : null;
    return new JsonTree(found == null ? "" : found);
  }

  /** Its text; empty of maps and lists. */
  String text() {
    return value instanceof String s ? s : "";
  }

  /** Its number. */
  double number() {
    try {
      return Double.parseDouble(text());
    } catch (NumberFormatException e) {
      return Double.NaN;
    }
  }

  /** Its items; none of anything but a list. */
  List<JsonTree> items() {
    return value instanceof List<?> list
        ? list.stream().map(i -> new JsonTree(java.util.Objects.requireNonNull(i))).toList()
        : List.of();
  }

  /** Its fields; none of anything but a map. */
  Map<String, JsonTree> fields() {
    Map<String, JsonTree> fields = new LinkedHashMap<>();
    if (value instanceof Map<?, ?> map) {
      map.forEach((name, v) -> fields.put(String.valueOf(name), new JsonTree(v == null ? "" : v)));
    }
    return fields;
  }

  /** Its items by the text of one of their fields; the first of several with one text. */
  Map<String, JsonTree> by(String field) {
    Map<String, JsonTree> all = new LinkedHashMap<>();
    items().forEach(item -> all.putIfAbsent(item.get(field).text(), item));
    return all;
  }
}
