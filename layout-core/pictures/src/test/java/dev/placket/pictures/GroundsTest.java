package dev.placket.pictures;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.base.Ground;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.base.ViewBox;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Grounds as they come, each drawn here so that where the ink is, is known by hand. */
class GroundsTest {
  private static final int WIDTH = 400;
  private static final int HEIGHT = 500;

  /** The strokes of 4 pixels reach from 58 to 322 across and from 78 to 422 down. */
  private static final InkedBox INK = new InkedBox(58, 78, 322, 422);

  private static BufferedImage drawn(@Nullable Color ground) {
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    if (ground != null) {
      g.setColor(ground);
      g.fillRect(0, 0, WIDTH, HEIGHT);
    }
    g.setColor(Color.BLACK);
    g.setStroke(new BasicStroke(4));
    g.drawOval(60, 80, 260, 340);
    g.drawLine(190, 80, 190, 420);
    g.dispose();
    return image;
  }

  private static byte[] png(BufferedImage image) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, "png", out);
    return out.toByteArray();
  }

  private static byte[] jpeg(BufferedImage image, float quality) throws IOException {
    BufferedImage rgb = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = rgb.createGraphics();
    g.drawImage(image, 0, 0, null);
    g.dispose();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try (ImageOutputStream stream = ImageIO.createImageOutputStream(out)) {
      writer.setOutput(stream);
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      param.setCompressionQuality(quality);
      writer.write(null, new IIOImage(rgb, null, null), param);
    } finally {
      writer.dispose();
    }
    return out.toByteArray();
  }

  private static PictureProbe probe(byte[] bytes) throws PictureException {
    return PictureReader.probe(PictureSource.of("try.png", bytes), ReadLimits.DEFAULT);
  }

  private static void assertInk(PictureProbe p, double slack) {
    InkedBox box = requireNonNull(p.inkedBox());
    assertEquals(INK.left(), box.left(), slack, box::toString);
    assertEquals(INK.top(), box.top(), slack, box::toString);
    assertEquals(INK.right(), box.right(), slack, box::toString);
    assertEquals(INK.bottom(), box.bottom(), slack, box::toString);
  }

  @Test
  void transparent() throws Exception {
    PictureProbe p = probe(png(drawn(null)));
    assertEquals(Ground.TRANSPARENT, p.ground());
    assertInk(p, 1);
  }

  @Test
  void transparentWithColoursHiddenInIt() throws Exception {
    BufferedImage image = drawn(null);
    Random random = new Random(3);
    for (int i = 0; i < WIDTH * HEIGHT; i++) {
      int x = i % WIDTH;
      int y = i / WIDTH;
      if (image.getRGB(x, y) >>> 24 == 0) {
        image.setRGB(x, y, random.nextInt() & 0xFFFFFF | random.nextInt(9) << 24);
      }
    }
    PictureProbe p = probe(png(image));
    assertEquals(Ground.TRANSPARENT, p.ground());
    assertInk(p, 1);
  }

  @ParameterizedTest
  @ValueSource(ints = {0xFFFFFF, 0xFDFDFD, 0xF4F1E8, 0xFBF8F0})
  void white(int ground) throws Exception {
    PictureProbe p = probe(png(drawn(new Color(ground))));
    assertEquals(Ground.OPAQUE_WHITE, p.ground());
    assertInk(p, 1);
  }

  @ParameterizedTest
  @ValueSource(ints = {0x808080, 0xFFC0CB, 0x000000, 0xC8D8FF})
  void other(int ground) throws Exception {
    PictureProbe p = probe(png(drawn(new Color(ground))));
    assertEquals(Ground.OPAQUE_OTHER, p.ground());
    assertEquals(new InkedBox(0, 0, WIDTH, HEIGHT), p.inkedBox());
  }

  @ParameterizedTest
  @ValueSource(floats = {0.95f, 0.85f, 0.75f, 0.5f})
  void noiseOfCompressionIsNoInk(float quality) throws Exception {
    PictureProbe p = probe(jpeg(drawn(Color.WHITE), quality));
    assertEquals(Ground.OPAQUE_WHITE, p.ground());
    assertInk(p, 2);
  }

  @Test
  void aScanWithItsGrainAndShade() throws Exception {
    BufferedImage image = drawn(new Color(0xF3EFE6));
    Random random = new Random(11);
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        // Darker by up to 12 levels towards the right, and grain of 3 levels in the mean.
        int shade = 12 * x / WIDTH;
        int p = image.getRGB(x, y);
        int out = 0xFF;
        for (int shift = 16; shift >= 0; shift -= 8) {
          long level = (p >> shift & 255) - shade + Math.round(3 * random.nextGaussian());
          out = out << 8 | (int) Math.max(0, Math.min(255, level));
        }
        image.setRGB(x, y, out);
      }
    }
    for (byte[] file : new byte[][] {png(image), jpeg(image, 0.85f)}) {
      PictureProbe p = probe(file);
      assertEquals(Ground.OPAQUE_WHITE, p.ground());
      assertInk(p, 2);
    }
  }

  private static BufferedImage framed(@Nullable Color ground, int from, int thick) {
    BufferedImage image = drawn(ground);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.DARK_GRAY);
    for (int i = from; i < from + thick; i++) {
      g.drawRect(i, i, WIDTH - 1 - 2 * i, HEIGHT - 1 - 2 * i);
    }
    g.dispose();
    return image;
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 7, 20})
  void aFrameLineIsRecognisedWhereverItStands(int from) throws Exception {
    for (@Nullable Color ground : new @Nullable Color[] {Color.WHITE, null, new Color(0xF4F1E8)}) {
      for (int thick = 1; thick <= 6; thick++) {
        PictureProbe p = probe(png(framed(ground, from, thick)));
        assertEquals(
            ground == null ? Ground.TRANSPARENT : Ground.OPAQUE_WHITE, p.ground(), p::toString);
        assertTrue(p.notes().toString().contains("frame line"), p::toString);
        assertEquals(new InkedBox(from, from, WIDTH - from, HEIGHT - from), p.inkedBox());
        InkedBox inside = requireNonNull(p.insideFrame());
        assertEquals(INK.left(), inside.left(), 1, inside::toString);
        assertEquals(INK.bottom(), inside.bottom(), 1, inside::toString);
      }
    }
  }

  @Test
  void aFrameLineOfAJpegIsRecognised() throws Exception {
    PictureProbe p = probe(jpeg(framed(Color.WHITE, 0, 2), 0.85f));
    assertEquals(Ground.OPAQUE_WHITE, p.ground());
    assertTrue(p.notes().toString().contains("frame line"), p::toString);
  }

  @Test
  void aDrawingWithStraightEdgesIsNoFrame() throws Exception {
    // A scarf: a filled square; a towel: hems at top and bottom only; a square with nothing in it.
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.BLACK);
    g.fillRect(50, 50, 300, 300);
    g.dispose();
    assertNull(probe(png(image)).insideFrame());
    image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_ARGB);
    g = image.createGraphics();
    g.setColor(Color.BLACK);
    g.drawLine(50, 50, 350, 50);
    g.drawLine(50, 350, 350, 350);
    g.drawLine(200, 50, 200, 350);
    g.dispose();
    assertNull(probe(png(image)).insideFrame());
    image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_ARGB);
    g = image.createGraphics();
    g.setColor(Color.BLACK);
    g.drawRect(50, 50, 300, 300);
    g.dispose();
    assertNull(probe(png(image)).insideFrame());
  }

  @Test
  void aBlankPictureIsProbedAndSaidSo() throws Exception {
    PictureProbe p = probe(png(new BufferedImage(30, 20, BufferedImage.TYPE_INT_ARGB)));
    assertNull(p.inkedBox());
    assertTrue(p.notes().toString().contains("blank"), p::toString);
  }

  @Test
  void inkAtTheVeryEdgeIsFound() throws Exception {
    BufferedImage image = new BufferedImage(30, 20, BufferedImage.TYPE_INT_ARGB);
    image.setRGB(0, 19, 0xFF000000);
    image.setRGB(29, 3, 0xFF000000);
    assertEquals(new InkedBox(0, 3, 30, 20), probe(png(image)).inkedBox());
  }

  @Test
  void geometryAndPixelsAgreeWithinAPixel() throws Exception {
    for (String name : new String[] {"carlton-front.svg", "jane-back.svg", "huey-front.svg"}) {
      Drawing d =
          (Drawing)
              PictureReader.read(
                  PictureSource.of(Flats.folder().resolve(name)), ReadLimits.DEFAULT);
      ViewBox v = d.viewBox();
      InkedBox all = new InkedBox(v.x(), v.y(), v.x() + v.width(), v.y() + v.height());
      InkedBox seen = requireNonNull(probe(png(d.render(1000, all))).inkedBox());
      double scale = 1000 / v.width();
      assertEquals((d.inkedBox().left() - v.x()) * scale, seen.left(), 1.01, name);
      assertEquals((d.inkedBox().top() - v.y()) * scale, seen.top(), 1.01, name);
      assertEquals((d.inkedBox().right() - v.x()) * scale, seen.right(), 1.01, name);
      assertEquals((d.inkedBox().bottom() - v.y()) * scale, seen.bottom(), 1.01, name);
    }
  }
}
