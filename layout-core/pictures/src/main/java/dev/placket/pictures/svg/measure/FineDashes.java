package dev.placket.pictures.svg.measure;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.base.ViewBox;
import dev.placket.pictures.css.OwnStyle;
import dev.placket.pictures.fault.ErrorText;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.ReadLimit;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Refuses dashes so fine that one line across the drawing has more than the limit of them, before
 * anything is built: Batik makes the dashes of patterns and markers while it builds them.
 */
public final class FineDashes {
  private FineDashes() {}

  /** Refuses a drawing with dashes finer than the limit allows in this box. */
  public static void check(String name, Element root, ViewBox box, ReadLimits limits)
      throws PictureException {
    double finest = Math.hypot(box.width(), box.height()) / limits.dashes();
    Element fine = find(root, finest);
    if (fine != null) {
      throw PictureException.over(
          ReadLimit.DASHES,
          Fault.limit(
                  name,
                  "has dashes of "
                      + ErrorText.line(String.valueOf(OwnStyle.get(fine, "stroke-dasharray")))
                      + ", of which a line comes to more than "
                      + limits.dashes())
              .remedy("draw it with longer dashes"));
    }
  }

  private static @Nullable Element find(Element e, double finest) {
    String dashes = OwnStyle.get(e, "stroke-dasharray");
    if (dashes != null && !dashes.isEmpty() && period(dashes) < finest) {
      return e;
    }
    for (Node n = e.getFirstChild(); n != null; n = n.getNextSibling()) {
      Element found = n instanceof Element child ? find(child, finest) : null;
      if (found != null) {
        return found;
      }
    }
    return null;
  }

  /** The sum of what is stated; infinite where that means a plain line or cannot be known. */
  private static double period(String dashes) {
    double sum = 0;
    for (String part : dashes.split(",")) {
      try {
        sum += Double.parseDouble(part.replaceFirst("px$", ""));
      } catch (NumberFormatException e) {
        return Double.POSITIVE_INFINITY;
      }
    }
    return sum > 0 ? sum : Double.POSITIVE_INFINITY;
  }
}
