package dev.placket.pictures.typeface;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Which face of a family is set for which weight and style (CSS Fonts 4, 5.2). */
public final class FaceMatching {
  private FaceMatching() {}

  /**
   * The face that is set, or null if the family has none.
   *
   * @param family the faces of one family
   * @param weight from 1 to 1000
   */
  public static @Nullable GivenTypeface find(
      List<GivenTypeface> family, int weight, boolean italic) {
    List<GivenTypeface> ofStyle = family.stream().filter(t -> t.italic() == italic).toList();
    List<GivenTypeface> among = ofStyle.isEmpty() ? family : ofStyle;
    for (int wanted : order(weight)) {
      for (GivenTypeface t : among) {
        if (t.weight() == wanted) {
          return t;
        }
      }
    }
    return null;
  }

  /** The hundreds for which a face of its family is set, as SVG 1.1 writes them in a font-face. */
  public static String weights(List<GivenTypeface> family, GivenTypeface face) {
    return IntStream.rangeClosed(1, 9)
        .map(i -> i * 100)
        .filter(w -> find(family, w, face.italic()) == face)
        .mapToObj(Integer::toString)
        .collect(Collectors.joining(","));
  }

  /** The styles for which a face is set: both where its family has no other. */
  public static String styles(List<GivenTypeface> family, GivenTypeface face) {
    boolean alone = family.stream().allMatch(t -> t.italic() == face.italic());
    return alone ? "normal,italic,oblique" : face.italic() ? "italic,oblique" : "normal";
  }

  /** All weights in the order in which they are looked for. */
  private static List<Integer> order(int weight) {
    List<Integer> order = new ArrayList<>();
    if (weight >= 400 && weight <= 500) {
      IntStream.rangeClosed(weight, 500).forEach(order::add);
      IntStream.iterate(weight - 1, w -> w >= 1, w -> w - 1).forEach(order::add);
      IntStream.rangeClosed(501, 1000).forEach(order::add);
    } else if (weight < 400) {
      IntStream.iterate(weight, w -> w >= 1, w -> w - 1).forEach(order::add);
      IntStream.rangeClosed(weight + 1, 1000).forEach(order::add);
    } else {
      IntStream.rangeClosed(weight, 1000).forEach(order::add);
      IntStream.iterate(weight - 1, w -> w >= 1, w -> w - 1).forEach(order::add);
    }
    return order;
  }
}
