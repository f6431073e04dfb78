package dev.placket.pictures.svg.parse;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.placket.pictures.base.ViewBox;
import dev.placket.pictures.svg.parse.Viewport.Align;
import dev.placket.pictures.svg.parse.Viewport.Scaling;
import java.awt.geom.AffineTransform;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** SVG 2, 8.2: the 35 cases, given to six decimals. */
class ViewportTest {
  @ParameterizedTest
  @CsvFileSource(resources = "preserve_aspect_ratio.csv", numLinesToSkip = 2)
  void fitsAsTheStandardSays(
      double x,
      double y,
      double w,
      double h,
      double ex,
      double ey,
      double ew,
      double eh,
      String align,
      String scaling,
      double sx,
      double sy,
      double tx,
      double ty) {
    boolean none = align.equals("none");
    Align ax = none ? Align.MID : Align.valueOf(align.substring(1, 4).toUpperCase(Locale.ROOT));
    Align ay = none ? Align.MID : Align.valueOf(align.substring(5, 8).toUpperCase(Locale.ROOT));
    Scaling s = none ? Scaling.STRETCH : Scaling.valueOf(scaling.toUpperCase(Locale.ROOT));
    AffineTransform t = Viewport.fit(new ViewBox(x, y, w, h), ex, ey, ew, eh, ax, ay, s);
    assertEquals(sx, t.getScaleX(), 1e-6);
    assertEquals(sy, t.getScaleY(), 1e-6);
    assertEquals(tx, t.getTranslateX(), 1e-5);
    assertEquals(ty, t.getTranslateY(), 1e-5);
  }
}
