package dev.placket.benchmarks.order;

import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.PlacedBoxes;
import dev.placket.layout.fit.Placement;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.units.Rect;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;

/** A fit as boxes: ink filled, footprints thin, labelled cells hatched grey. */
public final class FitPicture {
  private FitPicture() {}

  /**
   * The picture, one pixel for each point.
   *
   * @param request what was asked
   * @param fit the answer
   * @param title what stands at the top
   */
  public static BufferedImage of(FitRequest request, Fit fit, String title) {
    int width = (int) Math.ceil(request.sheet().paper().width().pt());
    int height = (int) Math.ceil(request.sheet().paper().height().pt());
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, width, height);
    g.setColor(Color.DARK_GRAY);
    g.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 11));
    g.drawString(title, 30, 18);
    g.draw(rectangle(request.sheet().inside()));
    for (LabelledCell c : request.sheet().labelledCells()) {
      g.setColor(Color.LIGHT_GRAY);
      g.fill(rectangle(c.box()));
    }
    for (Flat f : request.flats()) {
      Placement at = fit.placement(f.id());
      g.setStroke(new BasicStroke(0.4f));
      g.setColor(Color.GRAY);
      g.draw(rectangle(PlacedBoxes.footprint(f, at).toBox()));
      Rect ink = PlacedBoxes.ink(f, at).toBox();
      g.setColor(f.role().isView() ? new Color(0xC9D7DE) : new Color(0xE6DCC8));
      g.fill(rectangle(ink));
      g.setColor(Color.BLACK);
      g.draw(rectangle(ink));
      g.drawString(f.id(), (float) ink.left() + 2, (float) ink.bottom() + 11);
    }
    g.dispose();
    return image;
  }

  private static Rectangle2D rectangle(Rect b) {
    return new Rectangle2D.Double(b.left(), b.top(), b.width(), b.height());
  }
}
