package dev.placket.pictures.svg.measure;

import java.awt.BasicStroke;
import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;
import org.apache.batik.gvt.GraphicsNode;

/** Strokes of a drawing that are multiplied until this is closed. */
public final class StrokeWeights implements AutoCloseable {
  private final List<Strokes.Pen> before = new ArrayList<>();

  private StrokeWeights() {}

  /**
   * Multiplies all strokes.
   *
   * @param factor by which widths and dashes are multiplied
   * @param gap what gaps between dashes have at least, in drawing units
   */
  public static StrokeWeights set(
      GraphicsNode node, AffineTransform toUnits, double factor, double gap) {
    StrokeWeights weights = new StrokeWeights();
    Strokes.each(
        node,
        toUnits,
        pen -> {
          weights.before.add(pen);
          pen.painter().setStroke(multiplied(pen, factor, gap));
        });
    return weights;
  }

  @Override
  public void close() {
    before.forEach(pen -> pen.painter().setStroke(pen.stroke()));
  }

  private static BasicStroke multiplied(Strokes.Pen pen, double factor, double gap) {
    BasicStroke own = pen.stroke();
    float width = (float) (factor * own.getLineWidth());
    float[] dashes = own.getDashArray();
    if (dashes == null) {
      return new BasicStroke(width, own.getEndCap(), own.getLineJoin(), own.getMiterLimit());
    }
    double size = Math.sqrt(Math.abs(pen.at().getDeterminant()));
    double caps = own.getEndCap() == BasicStroke.CAP_BUTT ? 0 : width;
    double least = size == 0 ? 0 : gap / size + caps;
    float[] all = new float[dashes.length];
    boolean odd = dashes.length % 2 == 1;
    for (int i = 0; i < all.length; i++) {
      all[i] = (float) (factor * dashes[i]);
      boolean open = !odd && i % 2 == 1 && dashes[i] > 0;
      all[i] = open ? (float) Math.max(all[i], least) : all[i];
    }
    float phase = (float) (factor * own.getDashPhase());
    return new BasicStroke(
        width, own.getEndCap(), own.getLineJoin(), own.getMiterLimit(), all, phase);
  }
}
