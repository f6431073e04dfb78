package dev.placket.pictures.prepare;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.pictures.base.PictureException;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.util.HashSet;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import javax.imageio.ImageIO;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/**
 * Colours are exchanged only where nobody sees it. Peak signal to noise ratio by its usual formula,
 * 10 log (255² over the mean squared error), reckoned here from the pixels.
 */
class FewColoursTest {
  private static final double UNSEEN = 60;

  @Property(tries = 60)
  void whatIsExchangedIsNotSeen(@ForAll @IntRange(min = 1, max = 5) int shapes, @ForAll long seed)
      throws Exception {
    PixelGrid grid = art(shapes, seed);
    PixelRows few = PaletteRows.of(grid);
    if (few == null) {
      // Each colour in front of each other mixes with it; of few shapes all mixtures find room.
      assertTrue(shapes > 2, shapes + " shapes were found to have too many colours");
      return;
    }
    PixelGrid found = PixelGrid.of(few);
    Set<Integer> colours = new HashSet<>();
    double onWhite = 0;
    double onBlack = 0;
    for (int y = 0; y < grid.height(); y++) {
      for (int x = 0; x < grid.width(); x++) {
        colours.add(found.at(x, y));
        assertEquals(grid.at(x, y) >>> 24 == 0, found.at(x, y) >>> 24 == 0, "what is clear");
        onWhite += squares(grid.at(x, y), found.at(x, y), 255);
        onBlack += squares(grid.at(x, y), found.at(x, y), 0);
      }
    }
    assertTrue(colours.size() <= 256);
    double pixels = (double) grid.width() * grid.height();
    assertTrue(decibel(onWhite / 3 / pixels) >= UNSEEN, decibel(onWhite / 3 / pixels) + " dB");
    // With alpha as a fourth channel, the colours alone may lie a third above the mean of all.
    assertTrue(decibel(onBlack / 4 / pixels) >= UNSEEN, decibel(onBlack / 4 / pixels) + " dB");
  }

  @Test
  void colouredArtWeighsLessAndReadsBack() throws Exception {
    PixelGrid grid = art(3, 7);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    assertTrue(PngWriter.writeFewColours(grid, null, out));
    assertTrue(out.size() < PngWriter.encode(grid, null).length);
    PixelGrid expected = exchanged(grid);
    BufferedImage read = ImageIO.read(new ByteArrayInputStream(out.toByteArray()));
    for (int y = 0; y < grid.height(); y++) {
      for (int x = 0; x < grid.width(); x++) {
        assertEquals(expected.at(x, y), read.getRGB(x, y));
      }
    }
  }

  @Test
  void twiceIsOnce() throws Exception {
    PixelGrid once = exchanged(art(3, 7));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    assertFalse(PngWriter.writeFewColours(once, null, out));
    assertArrayEquals(PngWriter.encode(once, null), out.toByteArray());
  }

  @Test
  void noiseKeepsItsColours() throws Exception {
    PixelGrid noise = Grids.any(200, 200, 5);
    assertNull(PaletteRows.of(noise));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    assertFalse(PngWriter.writeFewColours(noise, null, out));
    assertArrayEquals(PngWriter.encode(noise, null), out.toByteArray());
  }

  /** More colours than are counted at all: a photograph's. */
  @Test
  void tooManyColoursAreNotLookedAt() throws Exception {
    PixelGrid wide = Grids.of(512, 256, (x, y) -> 0xFF000000 | x << 8 | y);
    assertNull(PaletteRows.of(wide));
  }

  /** Two colours stay two: nothing is mixed where nothing has to be. */
  @Test
  void fewColoursStayAsTheyAre() throws Exception {
    PixelGrid two = Grids.of(40, 40, (x, y) -> x < y ? 0xFFAA3311 : 0);
    PixelGrid found = exchanged(two);
    assertEquals(0xFFAA3311, found.at(0, 39));
    assertEquals(0, found.at(39, 0));
  }

  private static PixelGrid exchanged(PixelGrid grid) throws PictureException {
    return PixelGrid.of(Objects.requireNonNull(PaletteRows.of(grid)));
  }

  /** Filled shapes with smooth edges and black outlines on nothing. */
  private static PixelGrid art(int shapes, long seed) {
    Random random = new Random(seed);
    BufferedImage image = new BufferedImage(600, 480, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setStroke(new BasicStroke(1.6f));
    for (int i = 0; i < shapes; i++) {
      int x = random.nextInt(300);
      int y = random.nextInt(240);
      g.setColor(new Color(random.nextInt(1 << 24)));
      g.fillOval(x, y, 280, 220);
      g.setColor(Color.BLACK);
      g.drawOval(x, y, 280, 220);
    }
    g.dispose();
    return PixelGrid.of(image);
  }

  private static double squares(int p, int q, int ground) {
    double alpha = ground == 0 ? (p >>> 24) - (q >>> 24) : 0;
    double sum = alpha * alpha;
    for (int shift = 0; shift < 24; shift += 8) {
      double d = Grids.over(p, shift, ground) - Grids.over(q, shift, ground);
      sum += d * d;
    }
    return sum;
  }

  private static double decibel(double mean) {
    return mean == 0 ? 99 : 10 * Math.log10(255 * 255 / mean);
  }
}
