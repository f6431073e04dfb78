package dev.placket.pictures.raster;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.imageio.ImageIO;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** Any cut and any flipped byte ends in a picture or in one message, in every format. */
class RasterPropertyTest {
  private static final Map<String, byte[]> WHOLE = samples();

  @Property(tries = 400)
  void aCutEndsInAResultOrOneMessage(@ForAll("formats") String format, @ForAll @IntRange int seed) {
    byte[] whole = sample(format);
    readsOrSays(format, Arrays.copyOf(whole, Math.floorMod(seed, whole.length)));
  }

  @Property(tries = 600)
  void flippedBytesEndInAResultOrOneMessage(
      @ForAll("formats") String format,
      @ForAll int[] where,
      @ForAll @IntRange(max = 255) int mask) {
    byte[] bytes = sample(format).clone();
    for (int i = 0; i < Math.min(3, where.length); i++) {
      bytes[Math.floorMod(where[i], bytes.length)] ^= (byte) mask;
    }
    readsOrSays(format, bytes);
  }

  @Property(tries = 300)
  void aFlippedByteOfAHeaderEndsInAResultOrOneMessage(
      @ForAll("formats") String format,
      @ForAll @IntRange(max = 80) int at,
      @ForAll @IntRange(max = 255) int value) {
    byte[] bytes = sample(format).clone();
    bytes[Math.min(at, bytes.length - 1)] = (byte) value;
    readsOrSays(format, bytes);
  }

  @Provide
  Arbitrary<String> formats() {
    return Arbitraries.of(WHOLE.keySet());
  }

  private static byte[] sample(String format) {
    byte[] bytes = WHOLE.get(format);
    if (bytes == null) {
      throw new IllegalArgumentException(format);
    }
    return bytes;
  }

  private static void readsOrSays(String format, byte[] bytes) {
    PictureSource source = PictureSource.of("try." + format, bytes);
    // Lying headers must not ask for more than a small picture does.
    ReadLimits limits = ReadLimits.DEFAULT.withPixels(1_000_000).withMemory(16L << 20);
    try {
      PictureReader.read(source, limits);
    } catch (PictureException e) {
      String message = String.valueOf(e.getMessage());
      assertTrue(message.startsWith("try."), message);
      assertTrue(message.contains(";") && !message.contains("\n"), message);
    }
    try {
      PictureReader.probe(source, limits);
      PictureReader.head(source, limits);
    } catch (PictureException e) {
      assertTrue(String.valueOf(e.getMessage()).startsWith("try."), e.getMessage());
    }
  }

  private static Map<String, byte[]> samples() {
    BufferedImage image = new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, 40, 30);
    g.setColor(Color.BLACK);
    g.drawOval(5, 5, 20, 20);
    g.dispose();
    Map<String, byte[]> all = new LinkedHashMap<>();
    for (String format : new String[] {"png", "jpg", "gif", "bmp", "tiff"}) {
      try {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, format, out);
        all.put(format, out.toByteArray());
      } catch (IOException e) {
        throw new IllegalStateException(e);
      }
    }
    PngWriter interlaced = new PngWriter(9, 9, 16, 6);
    interlaced.interlaced = true;
    interlaced.filter = PngWriter.MIXED;
    interlaced.before.add(PngWriter.physical(2, 1, 0));
    interlaced.before.add(PngWriter.chunk("eXIf", ExifBlock.of(false).orientation(8).bytes()));
    all.put(
        "interlaced.png", interlaced.write(new java.util.Random(1).ints(324, 0, 65536).toArray()));
    return all;
  }
}
