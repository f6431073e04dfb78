package dev.placket.packs.output;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The title of a pack and the stem of its file names, from the values of its header. */
public final class PackName {
  private static final String NUMBER = "style-number";

  /** What names a pack, in the order in which people say it. */
  private static final List<String> NAMING = List.of("label", NUMBER, "style-name");

  private PackName() {}

  /**
   * Label, style number and style name.
   *
   * @param fields the header's values by their names
   * @param other what to call it where none of them is stated
   */
  public static String title(Map<String, String> fields, String other) {
    String named =
        NAMING.stream()
            .map(field -> fields.getOrDefault(field, ""))
            .filter(value -> !value.isBlank())
            .collect(Collectors.joining(" "));
    return named.isEmpty() ? other : named;
  }

  /**
   * The stem of the names of its files: the style number.
   *
   * @param other what to call it where that is not stated
   * @param unnamed the stem where no letter or digit is left of either
   */
  public static String stem(Map<String, String> fields, String other, String unnamed) {
    String number = fields.getOrDefault(NUMBER, "");
    return OutputName.stem(number.isBlank() ? other : number, unnamed);
  }
}
