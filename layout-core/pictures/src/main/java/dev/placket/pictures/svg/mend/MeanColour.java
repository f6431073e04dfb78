package dev.placket.pictures.svg.mend;

import java.awt.Color;

/** The mean of colours by their shares, each counting by how much it covers. */
final class MeanColour {
  private double red;
  private double green;
  private double blue;
  private double cover;
  private double all;

  static Color of(Color a, double shareOfA, Color b, double shareOfB) {
    MeanColour mean = new MeanColour();
    mean.add(a, shareOfA);
    mean.add(b, shareOfB);
    return mean.colour();
  }

  void add(Color c, double share) {
    double weight = c.getAlpha() / 255.0 * share;
    red += c.getRed() * weight;
    green += c.getGreen() * weight;
    blue += c.getBlue() * weight;
    cover += weight;
    all += share;
  }

  /** Fully clear where nothing covers. */
  Color colour() {
    if (!(cover > 0)) {
      return new Color(0, 0, 0, 0);
    }
    return new Color(
        byteOf(red / cover),
        byteOf(green / cover),
        byteOf(blue / cover),
        byteOf(255 * cover / all));
  }

  private static int byteOf(double value) {
    return (int) Math.max(0, Math.min(255, Math.round(value)));
  }
}
