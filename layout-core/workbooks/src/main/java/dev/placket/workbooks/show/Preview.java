package dev.placket.workbooks.show;

import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Rule;
import dev.placket.layout.sheet.SheetWindow;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import dev.placket.packs.text.Lettering;
import dev.placket.workbooks.geometry.CellRange;
import dev.placket.workbooks.geometry.Grid;
import dev.placket.workbooks.place.Anchored;
import dev.placket.workbooks.place.Fitted;
import dev.placket.workbooks.place.PrintedScale;
import dev.placket.workbooks.read.Mark;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.HashMap;
import java.util.Map;

/**
 * A picture of a printed page that shows what was taken for what: hatched cells stay clear, dashed
 * frames are windows.
 */
public final class Preview {
  private static final Color PAPER = Color.WHITE;
  private static final Color CLEAR = new Color(0xE9, 0xE6, 0xDF);
  private static final Color HATCH = new Color(0xC9, 0xC3, 0xB6);
  private static final Color INK = new Color(0x33, 0x30, 0x2B);
  private static final Color WINDOW = new Color(0x1F, 0x5A, 0x4E);
  private static final float HATCH_STEP = 6;
  private static final int LEAST_FOR_TEXT = 7;

  private final Fitted fitted;
  private final Graphics2D g;
  private final Lettering lettering;

  private Preview(Fitted fitted, Graphics2D g, Lettering lettering) {
    this.fitted = fitted;
    this.g = g;
    this.lettering = lettering;
  }

  /**
   * The page with its pictures, at 72 pixels to the inch of paper: one pixel to the point is enough
   * to see what was taken for what.
   *
   * @param lettering for all words
   * @param most most pixels, give or take those of one edge; a page that would have more has fewer
   *     to the inch
   */
  public static BufferedImage of(Fitted fitted, Lettering lettering, long most) {
    PaperSize paper = fitted.room().sheet().paper();
    double scale = scale(paper, most);
    BufferedImage image =
        new BufferedImage(
            side(paper.width(), scale), side(paper.height(), scale), BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    try {
      g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      g.setRenderingHint(
          RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
      g.setColor(PAPER);
      g.fillRect(0, 0, image.getWidth(), image.getHeight());
      g.scale(scale, scale);
      new Preview(fitted, g, lettering).draw();
    } finally {
      g.dispose();
    }
    return image;
  }

  /** The pixels that the picture has, where it has at most so many. */
  public static long pixels(Fitted fitted, long most) {
    PaperSize paper = fitted.room().sheet().paper();
    double scale = scale(paper, most);
    return (long) side(paper.width(), scale) * side(paper.height(), scale);
  }

  private static double scale(PaperSize paper, long most) {
    return Math.min(1, Math.sqrt(most / (paper.width().pt() * paper.height().pt())));
  }

  private static int side(Length length, double scale) {
    return (int) Math.ceil(length.pt() * scale);
  }

  private void draw() {
    fitted.room().marks().forEach(this::hatch);
    Path2D letters = new Path2D.Double();
    Map<Long, CellRange> running = running();
    fitted.room().marks().forEach(m -> words(m, running, letters));
    g.setColor(INK);
    g.fill(letters);
    for (Rule rule : fitted.room().sheet().rules()) {
      Rect a = rule.axis();
      g.setColor(INK);
      g.setStroke(new BasicStroke((float) Math.max(0.3, rule.width().pt())));
      g.draw(new Line2D.Double(a.left(), a.top(), a.right(), a.bottom()));
    }
    g.setColor(WINDOW);
    g.setStroke(
        new BasicStroke(
            0.8f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 1, new float[] {5, 3}, 0));
    Path2D names = new Path2D.Double();
    for (SheetWindow window : fitted.room().sheet().windows()) {
      Rect b = fitted.room().sheet().box(window);
      g.draw(new Rectangle2D.Double(b.left() + 1, b.top() + 1, b.width() - 2, b.height() - 2));
      text("window " + window.name(), b.left() + 3, b.top() + 8, b, 6, names);
    }
    g.fill(names);
    fitted.pictures().forEach(this::picture);
    legend();
  }

  private void hatch(Mark mark) {
    Rect b = box(mark.range().common(fitted.room().page().cells()));
    Shape before = g.getClip();
    Rectangle2D r = new Rectangle2D.Double(b.left(), b.top(), b.width(), b.height());
    g.clip(r);
    g.setColor(CLEAR);
    g.fill(r);
    g.setColor(HATCH);
    g.setStroke(new BasicStroke(0.4f));
    for (double x = b.left() - b.height(); x < b.right(); x += HATCH_STEP) {
      g.draw(new Line2D.Double(x, b.bottom(), x + b.height(), b.top()));
    }
    g.setClip(before);
  }

  /** The ranges that texts run into, by the first cell of each. */
  private Map<Long, CellRange> running() {
    Map<Long, CellRange> running = new HashMap<>();
    for (Mark m : fitted.room().marks()) {
      if (m.why() == Mark.Why.TEXT_RUNS_IN) {
        running.put(spot(m.range().left(), m.range().top()), m.range());
      }
    }
    return running;
  }

  private static long spot(int column, int row) {
    return (long) row * Grid.COLUMNS + column;
  }

  /** What a range shows, or why it is kept clear where that cannot be seen. */
  private void words(Mark mark, Map<Long, CellRange> running, Path2D letters) {
    boolean seen = mark.why() == Mark.Why.FILL || mark.why() == Mark.Why.TEXT_RUNS_IN;
    String said = mark.text().isBlank() ? WorksheetJson.word(mark.why()) : mark.text();
    if (!seen) {
      CellRange page = fitted.room().page().cells();
      CellRange range = mark.range().common(page);
      CellRange run = running.get(spot(range.right(), range.top()));
      range = run == null ? range : range.around(run.common(page));
      Rect b = box(range);
      double size = Math.min(9, b.height() * 0.7);
      g.setColor(INK);
      text(said, b.left() + 1.5, (b.top() + b.bottom()) / 2 + size * 0.35, b, size, letters);
    }
  }

  /** What stays in its room is filled with all else, since one shape is filled sooner than many. */
  private void text(String words, double x, double y, Rect within, double size, Path2D letters) {
    if (within.height() < LEAST_FOR_TEXT || within.width() <= 0) {
      return;
    }
    Path2D outline = outline(VisualOrder.of(words.lines().findFirst().orElse("")), x, y, size);
    Rectangle2D room =
        new Rectangle2D.Double(within.left(), within.top(), within.width(), within.height());
    if (room.contains(outline.getBounds2D())) {
      letters.append(outline, false);
    } else {
      Shape before = g.getClip();
      g.clip(room);
      g.fill(outline);
      g.setClip(before);
    }
  }

  private void picture(Anchored picture) {
    var spot = picture.at();
    PrintedScale scale = scale();
    Rect corner = box(CellRange.cell(spot.column(), spot.row()));
    double left = corner.left() + scale.printedPoints(spot.across());
    double top = corner.top() + scale.printedPoints(spot.down());
    double width = scale.printedPoints(picture.width());
    double height = scale.printedPoints(picture.height());
    var raster = picture.flat().raster();
    if (raster != null) {
      var image = raster.image();
      var own = (Graphics2D) g.create();
      own.translate(left, top);
      own.scale(width / image.getWidth(), height / image.getHeight());
      own.drawImage(image, 0, 0, null);
      own.dispose();
    }
    g.setColor(WINDOW);
    g.setStroke(new BasicStroke(0.3f));
    g.draw(new Rectangle2D.Double(left, top, width, height));
  }

  private void legend() {
    PaperSize paper = fitted.room().sheet().paper();
    String words =
        "Worksheet "
            + fitted.worksheet().name()
            + ", printed at "
            + fitted.room().page().percent()
            + " %. Hatched: kept clear. Dashed: windows. Thin frames: what was put in.";
    g.setColor(INK);
    g.fill(outline(VisualOrder.of(words), 14, paper.height().pt() - 8, 7));
  }

  /** A line in the program's own letters, so that it looks the same on every machine. */
  private Path2D outline(String words, double x, double y, double em) {
    Length capitals = Length.pt(em * lettering.faces().get(0).capitals());
    Path2D line = new Path2D.Double();
    lettering.line(words, x, y, capitals, false).forEach(run -> line.append(run.outline(), false));
    return line;
  }

  private PrintedScale scale() {
    return new PrintedScale(fitted.room().page().percent());
  }

  /** Where cells lie on the paper, in points. */
  private Rect box(CellRange cells) {
    var room = fitted.room();
    CellRange page = room.page().cells();
    var columns = room.narrow().columns();
    var rows = room.narrow().rows();
    PrintedScale scale = scale();
    return new Rect(
        room.page().left() + scale.printedPoints(columns.between(page.left(), cells.left())),
        room.page().top() + scale.printedPoints(rows.between(page.top(), cells.top())),
        room.page().left() + scale.printedPoints(columns.between(page.left(), cells.right())),
        room.page().top() + scale.printedPoints(rows.between(page.top(), cells.bottom())));
  }
}
