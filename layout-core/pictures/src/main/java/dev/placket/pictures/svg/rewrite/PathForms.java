package dev.placket.pictures.svg.rewrite;

import java.util.List;
import org.w3c.dom.Element;

/**
 * Segments of paths that the engine mistakes.
 *
 * <p>A smooth curve after a curve of the other degree ({@code S} after {@code Q} or {@code T},
 * {@code T} after {@code C} or {@code S}) or after {@code Z}: its control point is the current
 * point (SVG 2, 9.3.6 and 9.3.7), where the engine mirrors an earlier one. It becomes a full curve,
 * so that the path keeps its segments and each vertex its one marker.
 *
 * <p>A closed subpath without a length: its caps draw a dot (SVG 2, 13.5.4), where the engine draws
 * nothing. It becomes an open one.
 */
final class PathForms implements Rewriting {
  /** A closed subpath of more segments than these has a length: nobody draws one that has none. */
  private static final int DOT_SEGMENTS = 4;

  private static final int QUADRATIC = 1;
  private static final int CUBIC = 2;
  private static final int CLOSE = 4;

  @Override
  public void rewrite(Element root, List<String> notes) {
    for (Element e : Styles.all(root)) {
      String d = e.getAttributeNS(null, "d");
      if (!d.isEmpty() && (mistaken(d) || mayHoldDots(d) && hasCaps(e))) {
        e.setAttributeNS(null, "d", PathRewriter.of(d));
      }
    }
  }

  private static boolean hasCaps(Element e) {
    String cap = Styles.inherited(e, "stroke-linecap");
    return cap.equals("round") || cap.equals("square");
  }

  /** Whether a smooth curve follows what the engine mirrors and should not. */
  private static boolean mistaken(String d) {
    int before = 0;
    for (int i = 0; i < d.length(); i++) {
      char c = d.charAt(i);
      if (c >= 'A' && c != 'e' && c != 'E') {
        int kind = kind(c);
        boolean smooth = c == 'S' || c == 's' || c == 'T' || c == 't';
        if (smooth && before != 0 && before != kind) {
          return true;
        }
        before = kind;
      }
    }
    return false;
  }

  private static int kind(char command) {
    return switch (command) {
      case 'Q', 'q', 'T', 't' -> QUADRATIC;
      case 'C', 'c', 'S', 's' -> CUBIC;
      case 'Z', 'z' -> CLOSE;
      default -> 0;
    };
  }

  private static boolean mayHoldDots(String d) {
    int segments = DOT_SEGMENTS;
    for (int i = 0; i < d.length(); i++) {
      char c = d.charAt(i);
      if (c == 'M' || c == 'm') {
        segments = 0;
      } else if ((c == 'Z' || c == 'z') && segments < DOT_SEGMENTS) {
        return true;
      } else if (c >= 'A' && c != 'e' && c != 'E') {
        segments++;
      }
    }
    return false;
  }
}
