package dev.placket.packs.description;

import java.util.List;
import java.util.Map;

/** A part of a description as it is written, with its place. */
sealed interface PackNode permits PackNode.Text, PackNode.Items, PackNode.Keys {
  /** Where it begins. */
  TextPosition mark();

  /** What messages call it. */
  String what();

  /**
   * A single value, as typed.
   *
   * @param mark where it begins
   * @param value its text without quotes
   */
  record Text(TextPosition mark, String value) implements PackNode {
    @Override
    public String what() {
      return value.isEmpty() ? "nothing" : "'" + shortened(value) + "'";
    }

    private static String shortened(String text) {
      String line = text.lines().findFirst().orElse("");
      return line.length() <= 40 ? line : line.substring(0, 39) + "…";
    }
  }

  /**
   * A list.
   *
   * @param mark where it begins
   * @param items its items in order
   */
  record Items(TextPosition mark, List<PackNode> items) implements PackNode {
    @Override
    public String what() {
      return "a list";
    }
  }

  /**
   * Keys with values.
   *
   * @param mark where it begins
   * @param values each value by its key, in the order written
   * @param places where each key stands
   */
  record Keys(TextPosition mark, Map<String, PackNode> values, Map<String, TextPosition> places)
      implements PackNode {
    @Override
    public String what() {
      return "keys with values";
    }
  }
}
