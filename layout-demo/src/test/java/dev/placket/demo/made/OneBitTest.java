package dev.placket.demo.made;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.demo.made.PageRead.Line;
import dev.placket.demo.made.PageRead.Words;
import dev.placket.demo.made.PaintedPaths.Figure;
import dev.placket.demo.made.PaintedPaths.Stroked;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * The demo pack as a printer shows it that knows black and nothing else: rules unbroken, letters
 * open, stitches apart, lines to be told from the colours they lie on.
 */
class OneBitTest {
  private static final double MM = 25.4 / 72;

  @Test
  void rulesStayWhole() throws Exception {
    MadePack made = MadePack.on("A4");
    int points = 0;
    int white = 0;
    for (int sheet = 0; sheet < made.sheets().size(); sheet++) {
      OneBit page = OneBit.cut(made.pdf(), sheet);
      for (Line line : PageRead.of(made.pdf(), sheet).lines()) {
        for (double at = line.start() + 0.2; at < line.end() - 0.2; at += 0.25) {
          points++;
          boolean black =
              line.upright() ? page.blackAt(line.at(), at) : page.blackAt(at, line.at());
          white += black ? 0 : 1;
        }
      }
    }
    System.out.printf(Locale.ROOT, "one bit: %d of %d points on rules are white%n", white, points);
    assertTrue(points > 10_000 && white == 0);
  }

  @Test
  void lettersKeepTheirInk() throws Exception {
    MadePack made = MadePack.on("A4");
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (int sheet = 0; sheet < made.sheets().size(); sheet++) {
      OneBit page = OneBit.cut(made.pdf(), sheet);
      for (Words w : PageRead.of(made.pdf(), sheet).words()) {
        if (w.text().matches(".*[\\p{L}0-9].*")) {
          double top = w.baseline() - 0.8 * w.em();
          double bottom = w.baseline() + 0.25 * w.em();
          double kept = page.kept(w.left(), top, w.right(), bottom);
          least = Math.min(least, kept);
          most = Math.max(most, kept);
        }
      }
    }
    System.out.printf(
        Locale.ROOT, "one bit: words have %.2f to %.2f times their ink in grey%n", least, most);
    assertTrue(least > 0.8 && most < 1.25);
  }

  @Test
  void theStrongLetterIsOpen() throws Exception {
    MadePack made = MadePack.on("A4");
    int sheet = made.sheet("measurements");
    PageRead read = PageRead.of(made.pdf(), sheet);
    double headings = read.find("XXL").baseline();
    Words m =
        read.words().stream()
            .filter(w -> w.text().equals("M") && Math.abs(w.baseline() - headings) < 1)
            .findFirst()
            .orElseThrow();
    // Two stems with the strokes between them: under its middle an M is cut three or four times.
    double y = m.baseline() - 0.22 * m.em();
    int runs = OneBit.cut(made.pdf(), sheet).runs(m.left() - 0.2, m.right() + 0.2, y);
    System.out.println("one bit: the strong M of the sample size is cut " + runs + " times");
    assertTrue(runs >= 3);
  }

  @Test
  void stitchesStayApart() throws Exception {
    MadePack made = MadePack.on("A4");
    int sheet = made.sheet("flats");
    double height = made.sheets().get(sheet).path("paper").path("height").asDouble();
    OneBit page = OneBit.cut(made.pdf(), sheet);
    int rows = 0;
    int whole = 0;
    for (Figure figure : PaintedPaths.figures(made.pdf(), sheet)) {
      for (Stroked s : figure.strokes()) {
        if (s.dashes().length > 0) {
          rows++;
          whole += gaps(page, s, height) ? 0 : 1;
        }
      }
    }
    System.out.printf(
        Locale.ROOT, "one bit: %d of %d rows of stitches have run together%n", whole, rows);
    assertTrue(rows > 40 && whole == 0);
  }

  @Test
  void linesAreToldFromTheColoursTheyLieOn() throws Exception {
    MadePack made = MadePack.on("A4");
    int sheet = made.sheet("colourways");
    double height = made.sheets().get(sheet).path("paper").path("height").asDouble();
    OneBit page = OneBit.dotted(made.pdf(), sheet);
    List<Figure> figures = PaintedPaths.figures(made.pdf(), sheet);
    for (int i = 0; i < figures.size(); i++) {
      // The longest whole upright line inside the cloth: the front edge.
      Stroked edge =
          figures.get(i).strokes().stream()
              .filter(s -> s.dashes().length == 0 && s.path().getBounds2D().getWidth() < 0.1)
              .max((a, b) -> Double.compare(tall(a), tall(b)))
              .orElseThrow();
      double x = edge.path().getBounds2D().getX() * MM;
      double top = (height - edge.path().getBounds2D().getMaxY()) * MM + 12;
      double bottom = top + 30;
      double half = edge.width() * MM / 2;
      double on = page.share(x - half, top, x + half, bottom);
      double beside = page.share(x - 3.5, top, x - 1.5, bottom);
      String flat = made.placements(sheet).get(i).path("flat").asText();
      System.out.printf(
          Locale.ROOT, "one bit: %s: %.2f ink on a line, %.2f beside%n", flat, on, beside);
      assertTrue(Math.abs(on - beside) >= 0.35, flat);
    }
  }

  private static double tall(Stroked s) {
    return s.path().getBounds2D().getHeight();
  }

  /** Whether white comes after black again and again along a row, wherever it is not covered. */
  private static boolean gaps(OneBit page, Stroked s, double height) {
    double period = (s.dashes()[0] + s.dashes()[1]) * MM;
    int sinceWhite = 0;
    for (Point2D p : along(s)) {
      sinceWhite = page.blackAt(p.getX() * MM, (height - p.getY()) * MM) ? sinceWhite + 1 : 0;
      if (sinceWhite * STEP > 1.6 * period) {
        return false;
      }
    }
    return true;
  }

  /** Millimetres between points that are looked at. */
  private static final double STEP = 0.05;

  private static List<Point2D> along(Stroked s) {
    List<Point2D> points = new ArrayList<>();
    double[] at = new double[6];
    Point2D from = new Point2D.Double();
    for (PathIterator i = s.path().getPathIterator(null, 0.01); !i.isDone(); i.next()) {
      int kind = i.currentSegment(at);
      Point2D to = new Point2D.Double(at[0], at[1]);
      if (kind == PathIterator.SEG_LINETO) {
        int steps = (int) Math.ceil(from.distance(to) * MM / STEP);
        for (int k = 0; k < steps; k++) {
          double t = (double) k / steps;
          points.add(
              new Point2D.Double(
                  from.getX() + t * (to.getX() - from.getX()),
                  from.getY() + t * (to.getY() - from.getY())));
        }
      }
      from = to;
    }
    return points;
  }
}
