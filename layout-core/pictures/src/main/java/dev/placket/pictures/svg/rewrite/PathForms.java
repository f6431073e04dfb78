package dev.placket.pictures.svg.rewrite;

import java.util.List;
import java.util.regex.Pattern;
import org.w3c.dom.Element;

/**
 * A smooth curve after a curve of the other degree ({@code S} after {@code Q} or {@code T}, {@code
 * T} after {@code C} or {@code S}): its control point is the current point (SVG 2, 9.3.6 and
 * 9.3.7), where the engine mirrors the other's. A line without a length between them makes it so.
 */
final class SmoothCurves implements Rewriting {
  private static final String NUMBERS = "[^A-DF-Za-df-z]*+";
  private static final Pattern CUBIC = Pattern.compile("([QqTt]" + NUMBERS + ")(?=[Ss])");
  private static final Pattern QUADRATIC = Pattern.compile("([CcSs]" + NUMBERS + ")(?=[Tt])");

  @Override
  public void rewrite(Element root, List<String> notes) {
    for (Element e : Styles.all(root)) {
      String d = e.getAttributeNS(null, "d");
      if (d.indexOf('T') >= 0
          || d.indexOf('t') >= 0
          || d.indexOf('Q') >= 0
          || d.indexOf('q') >= 0) {
        String cubic = CUBIC.matcher(d).replaceAll("$1l0 0");
        e.setAttributeNS(null, "d", QUADRATIC.matcher(cubic).replaceAll("$1l0 0"));
      }
    }
  }
}
