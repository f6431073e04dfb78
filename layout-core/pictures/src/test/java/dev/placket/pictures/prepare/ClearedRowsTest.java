package dev.placket.pictures.prepare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Pictures drawn on nothing are the truth; the same laid on white is what is cleared, and both must
 * look alike on any colour.
 */
class ClearedRowsTest {
  private static final int SIZE = 240;
  private static final int[] GROUNDS = {0x000000, 0x102060, 0xC03030, 0x808080, 0x40C040, 0xFFFFFF};

  /** What is drawn, and how far a pixel of its edges may be off on any colour, in grey levels. */
  enum Art {
    FINE_LINES(2, g -> lines(g, Color.BLACK, 0.7f)),
    LINES(2, g -> lines(g, Color.BLACK, 1.6f)),
    BROAD_LINES(2, g -> lines(g, Color.BLACK, 5)),
    GREY_LINES(14, g -> lines(g, new Color(90, 90, 90), 4)),
    RED_SHAPE(14, g -> shape(g, new Color(150, 30, 40))),
    PALE_SHAPE(30, g -> shape(g, new Color(205, 210, 220))),
    OUTLINED_SHAPE(
        8,
        g -> {
          shape(g, new Color(225, 225, 225));
          g.setColor(Color.BLACK);
          g.setStroke(new BasicStroke(4));
          g.draw(ellipse());
        });

    private final int off;
    private final Consumer<Graphics2D> painter;

    Art(int off, Consumer<Graphics2D> painter) {
      this.off = off;
      this.painter = painter;
    }

    private static void lines(Graphics2D g, Color color, float width) {
      g.setColor(color);
      g.setStroke(new BasicStroke(width));
      for (int i = 0; i < 8; i++) {
        double turn = Math.PI * i / 8 + 0.03;
        double x = 100 * Math.cos(turn);
        double y = 100 * Math.sin(turn);
        g.draw(new Line2D.Double(120.3 + 0.2 * x, 119.8 + 0.2 * y, 120.3 + x, 119.8 + y));
      }
    }

    private static void shape(Graphics2D g, Color color) {
      g.setColor(color);
      g.fill(ellipse());
    }

    private static Ellipse2D ellipse() {
      return new Ellipse2D.Double(40.3, 30.7, 150.1, 170.9);
    }
  }

  private static PixelGrid drawn(Consumer<Graphics2D> painter, int ground) {
    BufferedImage image = new BufferedImage(SIZE, SIZE, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    g.setBackground(new Color(ground, true));
    g.clearRect(0, 0, SIZE, SIZE);
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    painter.accept(g);
    g.dispose();
    return PixelGrid.of(image);
  }

  private static PixelGrid cleared(PixelGrid picture, Clearing clearing, boolean lossy)
      throws Exception {
    return PixelGrid.of(ClearedRows.of(picture, clearing, lossy));
  }

  private static double furthest(PixelGrid a, PixelGrid b, int ground) {
    double most = 0;
    for (int i = 0; i < SIZE * SIZE; i++) {
      for (int shift = 0; shift <= 16; shift += 8) {
        int under = ground >> shift & 255;
        double one = Grids.over(a.at(i % SIZE, i / SIZE), shift, under);
        double two = Grids.over(b.at(i % SIZE, i / SIZE), shift, under);
        most = Math.max(most, Math.abs(one - two));
      }
    }
    return most;
  }

  @ParameterizedTest
  @EnumSource
  void laidOnWhiteItIsThePicture(Art art) throws Exception {
    PixelGrid white = drawn(art.painter, 0xFFFFFFFF);
    PixelGrid made = cleared(white, Clearing.FROM_BORDER, false);
    assertEquals(0, made.at(0, 0));
    assertTrue(furthest(made, white, 0xFFFFFF) <= 1, "off by " + furthest(made, white, 0xFFFFFF));
  }

  @ParameterizedTest
  @EnumSource
  void noHaloOnAnyColour(Art art) throws Exception {
    PixelGrid truth = drawn(art.painter, 0);
    PixelGrid made = cleared(drawn(art.painter, 0xFFFFFFFF), Clearing.FROM_BORDER, false);
    for (int ground : GROUNDS) {
      double off = furthest(made, truth, ground);
      assertTrue(off <= art.off, art + " on " + Integer.toHexString(ground) + " off by " + off);
    }
  }

  @Test
  void aWhiteGarmentStaysFilledUnlessAsked() throws Exception {
    PixelGrid white =
        drawn(
            g -> {
              g.setColor(Color.BLACK);
              g.setStroke(new BasicStroke(1.5f));
              g.draw(Art.ellipse());
            },
            0xFFFFFFFF);
    assertEquals(0xFFFFFFFF, cleared(white, Clearing.FROM_BORDER, false).at(120, 120));
    assertEquals(0, cleared(white, Clearing.ENCLOSED_TOO, false).at(120, 120));
    assertEquals(0, cleared(white, Clearing.FROM_BORDER, false).at(10, 10));
  }

  @Test
  void jpegNoiseLeavesNoSpecks() throws Exception {
    PixelGrid truth = drawn(Art.LINES.painter, 0);
    PixelGrid made =
        cleared(jpeg(drawn(Art.LINES.painter, 0xFFFFFFFF), 0.6f), Clearing.FROM_BORDER, true);
    // JPEG spreads its noise over blocks of 8 pixels; beyond these there must be nothing at all.
    for (int y = 0; y < SIZE; y++) {
      for (int x = 0; x < SIZE; x++) {
        int alpha = made.at(x, y) >>> 24;
        int inked = most(truth, x, y, 8);
        if (inked == 0) {
          assertEquals(0, alpha, x + "," + y);
        } else if (most(truth, x, y, 2) == 0) {
          assertTrue(alpha <= 60, "a speck of alpha " + alpha + " at " + x + "," + y);
        }
      }
    }
    // And the lines are still there.
    assertEquals(mass(truth), mass(made), 0.05 * mass(truth));
  }

  private static double mass(PixelGrid grid) {
    double sum = 0;
    for (int i = 0; i < SIZE * SIZE; i++) {
      sum += 255 - Grids.over(grid.at(i % SIZE, i / SIZE), 8, 255);
    }
    return sum;
  }

  private static int most(PixelGrid grid, int x, int y, int round) {
    int most = 0;
    for (int v = Math.max(0, y - round); v <= Math.min(SIZE - 1, y + round); v++) {
      for (int u = Math.max(0, x - round); u <= Math.min(SIZE - 1, x + round); u++) {
        most = Math.max(most, grid.at(u, v) >>> 24);
      }
    }
    return most;
  }

  private static PixelGrid jpeg(PixelGrid grid, float quality) throws Exception {
    BufferedImage image = new BufferedImage(SIZE, SIZE, BufferedImage.TYPE_INT_RGB);
    image.getGraphics().drawImage(grid.toImage(), 0, 0, null);
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageWriteParam how = writer.getDefaultWriteParam();
    how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
    how.setCompressionQuality(quality);
    writer.setOutput(ImageIO.createImageOutputStream(bytes));
    writer.write(null, new IIOImage(image, null, null), how);
    ((javax.imageio.stream.ImageOutputStream) writer.getOutput()).flush();
    writer.dispose();
    BufferedImage read = ImageIO.read(new ByteArrayInputStream(bytes.toByteArray()));
    image.getGraphics().drawImage(read, 0, 0, null);
    return PixelGrid.of(image);
  }

  @Test
  void anOffWhiteScanIsClearedWithinItsOwnSpread() throws Exception {
    Random random = new Random(4);
    PixelGrid white = drawn(Art.BROAD_LINES.painter, 0xFFFFFFFF);
    PixelGrid scan =
        Grids.of(
            SIZE,
            SIZE,
            (x, y) -> Grids.grey(Math.max(0, (white.at(x, y) & 255) - 6 - random.nextInt(5))));
    PixelGrid made = cleared(scan, Clearing.FROM_BORDER, false);
    int left = 0;
    for (int i = 0; i < SIZE * SIZE; i++) {
      left +=
          (white.at(i % SIZE, i / SIZE) & 255) == 255 && made.at(i % SIZE, i / SIZE) >>> 24 > 0
              ? 1
              : 0;
    }
    assertEquals(0, left, "pixels of the ground that are not clear");
    // The ground was 6 to 10 under white; its spread of 4 may be taken for ground once more.
    double off = furthest(made, scan, 0xFFFFFF);
    assertTrue(off <= 10 + 4, "brightened by " + off);
  }

  /** Kraft paper, a blue sheet and black card; the last three inks are lighter than some. */
  @ParameterizedTest
  @ValueSource(ints = {0xFFB49468, 0xFF3C5AA0, 0xFF101010})
  void aGroundOfAnyColourIsClearedIfAsked(int ground) throws Exception {
    for (Color ink : List.of(new Color(30, 30, 30), new Color(150, 30, 40), Color.WHITE)) {
      int contrast = contrast(ink.getRGB(), ground);
      if (contrast < 60) {
        continue;
      }
      for (Consumer<Graphics2D> art :
          List.<Consumer<Graphics2D>>of(g -> Art.lines(g, ink, 4), g -> Art.shape(g, ink))) {
        PixelGrid truth = drawn(art, 0);
        PixelGrid laid = drawn(art, ground);
        assertSame(laid, ClearedRows.of(laid, Clearing.FROM_BORDER, false));
        PixelGrid made = cleared(laid, Clearing.ANY_COLOUR, false);
        assertEquals(0, made.at(0, 0));
        assertTrue(furthest(made, laid, ground) <= 1, "off by " + furthest(made, laid, ground));
        // Of an edge pixel only a part is ink: its rounding grows where the contrast is small.
        double most = 14 + 255.0 * 4 / contrast;
        for (int other : GROUNDS) {
          double off = furthest(made, truth, other);
          assertTrue(off <= most, ink + " on " + Integer.toHexString(other) + " off by " + off);
        }
      }
    }
  }

  private static int contrast(int p, int q) {
    int most = 0;
    for (int shift = 0; shift <= 16; shift += 8) {
      most = Math.max(most, Math.abs((p >> shift & 255) - (q >> shift & 255)));
    }
    return most;
  }

  @Test
  void aGroundOfManyColoursStays() throws Exception {
    PixelGrid any = Grids.any(60, 60, 3);
    PixelGrid opaque = Grids.of(60, 60, (x, y) -> 0xFF000000 | any.at(x, y));
    assertSame(opaque, ClearedRows.of(opaque, Clearing.ANY_COLOUR, false));
  }

  /** What a probe calls opaque white is cleared as white: paper of 218 levels with a tint. */
  @Test
  void offWhitePaperIsClearedUnasked() throws Exception {
    PixelGrid made =
        cleared(drawn(Art.BROAD_LINES.painter, 0xFFF0E8DA), Clearing.FROM_BORDER, false);
    assertEquals(0, made.at(0, 0));
  }

  @Test
  void clearingTwiceIsClearingOnce() throws Exception {
    PixelGrid once = cleared(drawn(Art.LINES.painter, 0xFFFFFFFF), Clearing.FROM_BORDER, false);
    PixelGrid twice = cleared(once, Clearing.FROM_BORDER, false);
    for (int i = 0; i < SIZE * SIZE; i++) {
      assertEquals(once.at(i % SIZE, i / SIZE), twice.at(i % SIZE, i / SIZE));
    }
  }
}
