package dev.placket.pictures.svg.parse;

import java.util.Set;

/**
 * Estimates the memory that parts of a drawing take until it is drawn, in bytes, from its text
 * alone. The figures were measured as the smallest heap in which drawings of one kind are read.
 */
final class DrawingMemory {
  static final int ELEMENT = 800;
  private static final int ATTRIBUTE = 300;
  private static final int CHARACTER = 8;

  /** Text is laid out sign by sign. */
  private static final int SIGN = 1_000;

  /** What is kept of a segment once its path is built. */
  private static final int KEPT = 64;

  /** What each segment takes while its path is built: an object, then a share of several arrays. */
  private static final int LINE = 320;

  private static final int SMOOTH = 1_000;
  private static final int ARC = 1_500;

  private static final Set<String> POINTS = Set.of("polygon", "polyline");

  private DrawingMemory() {}

  /**
   * What an attribute takes.
   *
   * @param kept as long as the drawing is held
   * @param building beside that, while the element is built; one is built at a time
   */
  record Attribute(long kept, long building) {}

  static Attribute attribute(String element, String attribute, String value) {
    long text = ATTRIBUTE + (long) CHARACTER * value.length();
    boolean points = attribute.equals("points") && POINTS.contains(element);
    if (!points && !(attribute.equals("d") && element.equals("path"))) {
      return new Attribute(text, 0);
    }
    PathCount n = points ? PathCount.points(value) : PathCount.path(value);
    long building = LINE * n.lines() + SMOOTH * n.smooth() + ARC * n.arcs();
    return new Attribute(text + KEPT * (n.lines() + n.smooth() + n.arcs()), building);
  }

  /**
   * What text takes.
   *
   * @param element the one that it stands in
   */
  static long text(String element, String text) {
    boolean set = element.startsWith("t") && !text.isBlank();
    return (long) text.length() * (set ? SIGN : CHARACTER);
  }
}
