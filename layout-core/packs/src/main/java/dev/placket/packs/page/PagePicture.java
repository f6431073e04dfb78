package dev.placket.packs.page;

import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Rule;
import dev.placket.layout.units.Rect;
import dev.placket.packs.callouts.LaidText;
import dev.placket.packs.dimensions.LaidDimension;
import dev.placket.packs.text.TextRun;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.prepare.AreaRows;
import dev.placket.pictures.prepare.ImageRows;
import dev.placket.pictures.prepare.PixelRows;
import dev.placket.pictures.prepare.PngWriter;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;

/**
 * Draws a page for the screen. It draws what {@link PdfPage} writes, from the same values: reading
 * the PDF back only to see it would take longer than everything else that a run does.
 */
final class PagePicture {
  private static final double POINTS_PER_INCH = 72;

  private final Graphics2D g;
  private final double scale;

  private PagePicture(Graphics2D g, double scale) {
    this.g = g;
    this.scale = scale;
  }

  /** The PNG of a page; with fewer pixels to the inch where it would have too many of them. */
  static byte[] png(PdfPack.Filled page, double perInch, long most) {
    PaperSize paper = page.page().sheet().paper();
    double scale = scale(paper, perInch, most);
    BufferedImage image =
        new BufferedImage(
            (int) Math.round(paper.width().pt() * scale),
            (int) Math.round(paper.height().pt() * scale),
            BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    try {
      g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
      g.setRenderingHint(
          RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
      g.setColor(Color.WHITE);
      g.fillRect(0, 0, image.getWidth(), image.getHeight());
      g.setClip(0, 0, image.getWidth(), image.getHeight());
      g.scale(scale, scale);
      new PagePicture(g, scale).draw(page);
      return PngWriter.encodeLineArt(new ImageRows(image));
    } catch (PictureException e) {
      throw new IllegalStateException("pixels in memory can be read", e);
    } finally {
      g.dispose();
    }
  }

  private static double scale(PaperSize paper, double perInch, long most) {
    double points = paper.width().pt() * paper.height().pt();
    return Math.min(perInch / POINTS_PER_INCH, Math.sqrt(most / points));
  }

  /** The pixels that the PNG of a sheet of this paper has, give or take those of one edge. */
  static long pixels(PaperSize paper, double perInch, long most) {
    double scale = scale(paper, perInch, most);
    return Math.round(paper.width().pt() * scale) * Math.round(paper.height().pt() * scale);
  }

  private void draw(PdfPack.Filled filled) throws PictureException {
    Page page = filled.page();
    float tint = (float) Page.TINT;
    g.setColor(new Color(tint, tint, tint));
    for (Rect b : page.tints()) {
      g.fill(new Rectangle2D.Double(b.left(), b.top(), b.width(), b.height()));
    }
    g.setColor(Color.BLACK);
    for (Rect b : page.blacks()) {
      g.fill(new Rectangle2D.Double(b.left(), b.top(), b.width(), b.height()));
    }
    page.sheet().rules().forEach(this::line);
    Path2D letters = new Path2D.Double();
    page.cells().forEach(c -> text(c.runs(), letters));
    for (Inked picture : page.pictures()) {
      draw(picture);
    }
    for (Inked flat : filled.flats()) {
      draw(flat);
      flat.marks().forEach(this::line);
      flat.dimensions().forEach(d -> dimension(d, letters));
      flat.callouts().forEach(c -> callout(c, letters));
      text(flat.caption(), letters);
    }
    for (RevisionMark mark : filled.marks()) {
      g.setStroke(LeaderShapes.stroke());
      g.draw(PdfPage.triangle(mark));
      mark.strikes().forEach(this::line);
      text(mark.runs(), letters);
    }
    g.fill(letters);
  }

  private void line(Rule rule) {
    Rect b = rule.ink();
    g.fill(new Rectangle2D.Double(b.left(), b.top(), b.width(), b.height()));
  }

  private void dimension(LaidDimension d, Path2D letters) {
    mark(DimensionShapes.ground(d), DimensionShapes.arrows(d), DimensionShapes.lines(d));
    text(d.runs(), letters);
  }

  private void callout(LaidText c, Path2D letters) {
    mark(LeaderShapes.halos(c), LeaderShapes.ends(c), LeaderShapes.lines(c));
    text(c.runs(), letters);
  }

  private void mark(Shape white, Shape black, Shape lines) {
    g.setColor(Color.WHITE);
    g.fill(white);
    g.setColor(Color.BLACK);
    g.fill(black);
    g.setStroke(LeaderShapes.stroke());
    g.draw(lines);
  }

  private void text(List<TextRun> runs, Path2D all) {
    for (TextRun run : runs) {
      Path2D outline = run.outline();
      g.setColor(run.white() ? Color.WHITE : Color.BLACK);
      if (run.white()) {
        g.fill(outline);
      } else {
        all.append(outline, false);
      }
      if (run.strong()) {
        g.setStroke(
            new BasicStroke(PdfPage.strongLine(run), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        g.draw(outline);
      }
    }
    g.setColor(Color.BLACK);
  }

  private void draw(Inked flat) throws PictureException {
    Rect at = flat.ink();
    Graphics2D own = (Graphics2D) g.create();
    try {
      if (flat.art() instanceof Art.Paths paths) {
        into(own, at, paths.ink(), paths.scale());
        paths.painter().accept(own);
      } else if (flat.art() instanceof Art.PdfPart part) {
        into(own, at, part.ink(), part.scale());
        part.drawing().paint(own);
      } else if (flat.art() instanceof Art.Pixels pixels) {
        BufferedImage image = forScreen(pixels.image(), at);
        own.translate(at.left(), at.top());
        own.scale(at.width() / image.getWidth(), at.height() / image.getHeight());
        own.drawImage(image, 0, 0, null);
      }
    } finally {
      own.dispose();
    }
  }

  private static void into(Graphics2D g, Rect at, InkedBox ink, double scale) {
    g.translate(at.left() - ink.left() * scale, at.top() - ink.top() * scale);
    g.scale(scale, scale);
  }

  /** With no more pixels than the screen shows: a thin line between two of them would be lost. */
  private BufferedImage forScreen(BufferedImage image, Rect at) throws PictureException {
    int width = (int) Math.max(1, Math.ceil(at.width() * scale));
    int height = (int) Math.max(1, Math.ceil(at.height() * scale));
    if (width >= image.getWidth() || height >= image.getHeight()) {
      return image;
    }
    BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    PixelRows rows = new AreaRows(new ImageRows(image), width, height);
    int[] row = new int[width];
    try (PixelRows.Cursor in = rows.open()) {
      for (int y = 0; y < height; y++) {
        in.next(row);
        small.getRaster().setDataElements(0, y, width, 1, row);
      }
    }
    return small;
  }
}
