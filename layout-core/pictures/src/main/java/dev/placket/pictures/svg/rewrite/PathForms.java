package dev.placket.pictures.svg.rewrite;

import java.util.List;
import java.util.regex.Pattern;
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
  private static final String NUMBERS = "[^A-DF-Za-df-z]*+";
  private static final Pattern MISTAKEN =
      Pattern.compile(
          ("[QqTtZz]" + NUMBERS + "[Ss]|[CcSsZz]" + NUMBERS + "[Tt]")
              + ("|[Mm]" + NUMBERS + "(?:[LlHhVvCcSsQqTt]" + NUMBERS + "){0,3}+[Zz]"));

  @Override
  public void rewrite(Element root, List<String> notes) {
    for (Element e : Styles.all(root)) {
      String d = e.getAttributeNS(null, "d");
      if (!d.isEmpty() && MISTAKEN.matcher(d).find()) {
        e.setAttributeNS(null, "d", PathRewriter.of(d));
      }
    }
  }
}
