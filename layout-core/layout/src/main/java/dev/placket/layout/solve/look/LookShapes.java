package dev.placket.layout.solve.look;

import dev.placket.layout.units.Rect;
import java.util.List;

/** Measures of {@link Look} from shapes and areas. */
final class LookShapes {
  /** Sides that please: square, root of two, golden, root of three, double square. */
  private static final double[] PLEASING = {1, 1 / 1.414, 1 / 1.618, 1 / 1.732, 0.5};

  private final Rect frame;
  private final Rect layout;
  private final List<Rect> boxes;
  private final double ink;

  LookShapes(Rect frame, List<Rect> boxes) {
    this.frame = frame;
    this.boxes = boxes;
    this.layout = boxes.stream().reduce(boxes.get(0), Look::span);
    this.ink = boxes.stream().mapToDouble(LookShapes::area).sum();
  }

  private static double area(Rect b) {
    return b.width() * b.height();
  }

  double equilibrium() {
    double x = 0;
    double y = 0;
    for (Rect b : boxes) {
      x += area(b) * (b.left() + b.right() - frame.left() - frame.right()) / 2;
      y += area(b) * (b.top() + b.bottom() - frame.top() - frame.bottom()) / 2;
    }
    double n = boxes.size();
    double offX = 2 * x / (n * frame.width() * ink);
    double offY = 2 * y / (n * frame.height() * ink);
    return 1 - (Math.abs(offX) + Math.abs(offY)) / 2;
  }

  double cohesion() {
    double like = 0;
    for (Rect b : boxes) {
      like += alike(b, layout);
    }
    return (alike(layout, frame) + like / boxes.size()) / 2;
  }

  private static double alike(Rect a, Rect b) {
    double ratio = (a.height() / a.width()) / (b.height() / b.width());
    return Math.min(ratio, 1 / ratio);
  }

  /** How little of the frame that is not ink lies between the boxes. */
  double closeness() {
    double free = area(frame) - ink;
    return free <= 0 ? 1 : 1 - (area(layout) - ink) / free;
  }

  double proportion() {
    double sum = 0;
    for (Rect b : boxes) {
      sum += pleasing(b);
    }
    return (sum / boxes.size() + pleasing(layout)) / 2;
  }

  private static double pleasing(Rect b) {
    double ratio = Math.min(b.height() / b.width(), b.width() / b.height());
    double off = 0.5;
    for (double p : PLEASING) {
      off = Math.min(off, Math.abs(p - ratio));
    }
    return 1 - off / 0.5;
  }

  double density() {
    return 1 - 2 * Math.abs(0.5 - ink / area(frame));
  }
}
