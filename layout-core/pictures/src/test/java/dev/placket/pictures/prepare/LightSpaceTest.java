package dev.placket.pictures.prepare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * In which light space thin dark lines come out true when pixels are averaged. A printer lays black
 * as 1 less the grey value (ISO 32000-1, 10.3.3, from memory), so what is measured is the ink that
 * a line gets against the ink that its area asks for: averaging values as they are encoded keeps
 * it, averaging light loses much of it, the more the thinner the line.
 */
class LightSpaceTest {
  private static final int SIDE = 600;
  private static final int BY = 4;

  /** Widths in pixels of the result: 0.09, 0.18, 0.25 and 0.5 mm at 200 to the inch. */
  @ParameterizedTest
  @CsvSource({"0.71, 0.75", "1.42, 0.85", "1.97, 0.9", "3.94, 0.95"})
  void averagingEncodedValuesKeepsTheInk(double width, double mostOfLight) throws Exception {
    BufferedImage large = line(width * BY);
    PixelGrid encoded = PixelGrid.of(new AreaRows(new ImageRows(large), SIDE / BY, SIDE / BY));
    double asked = width * length() / BY;
    double byValue = 0;
    double byLight = 0;
    for (int y = 0; y < SIDE / BY; y++) {
      for (int x = 0; x < SIDE / BY; x++) {
        byValue += 1 - (encoded.at(x, y) & 255) / 255.0;
        byLight += 1 - averagedLight(large, x, y);
      }
    }
    System.out.printf(
        Locale.ROOT,
        "line of %.2f pixels: %.1f %% of its ink by encoded values, %.1f %% by light%n",
        width,
        100 * byValue / asked,
        100 * byLight / asked);
    assertEquals(1, byValue / asked, 0.01);
    assertTrue(byLight / asked < mostOfLight, "by light " + byLight / asked);
  }

  /** A slanted black line over white, of so many pixels. */
  private static BufferedImage line(double width) {
    BufferedImage image = new BufferedImage(SIDE, SIDE, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, SIDE, SIDE);
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.setColor(Color.BLACK);
    g.setStroke(new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
    g.draw(new Line2D.Double(100, 80, 480, 530));
    g.dispose();
    return image;
  }

  private static double length() {
    return Math.hypot(480 - 100, 530 - 80);
  }

  /** The mean of a block in light, encoded again: IEC 61966-2-1, from memory. */
  private static double averagedLight(BufferedImage large, int x, int y) {
    double sum = 0;
    for (int v = y * BY; v < (y + 1) * BY; v++) {
      for (int u = x * BY; u < (x + 1) * BY; u++) {
        double value = (large.getRGB(u, v) & 255) / 255.0;
        sum += value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
      }
    }
    double light = sum / BY / BY;
    return light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
  }
}
