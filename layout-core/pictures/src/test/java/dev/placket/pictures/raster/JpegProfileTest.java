package dev.placket.pictures.raster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.pictures.PictureReader;
import dev.placket.pictures.RasterPicture;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Colours of a JPEG arrive in sRGB by the profile that the file holds. */
class JpegProfileTest {
  /** JPEG keeps flat fields within some levels at the quality of these files. */
  private static final int NEAR = 4;

  /** Fields inside sRGB and inside the wide gamuts alike. */
  private static final int[] FIELDS = {0x808080, 0xB07050, 0x507090, 0x60A060, 0xE0E0D0};

  @TempDir private Path dir;

  private static BufferedImage fields() {
    BufferedImage image = new BufferedImage(16 * FIELDS.length, 16, BufferedImage.TYPE_INT_RGB);
    for (int x = 0; x < image.getWidth(); x++) {
      for (int y = 0; y < 16; y++) {
        image.setRGB(x, y, FIELDS[x / 16]);
      }
    }
    return image;
  }

  private static byte[] segment(byte[] profile) {
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    body.writeBytes("ICC_PROFILE\0".getBytes(java.nio.charset.StandardCharsets.ISO_8859_1));
    body.write(1);
    body.write(1);
    body.writeBytes(profile);
    return body.toByteArray();
  }

  private static byte[] jpeg(byte[] profile) {
    return JpegWriter.of(fields()).jfif(1, 72, 72).segment(0xE2, segment(profile)).bytes();
  }

  private static RasterPicture read(byte[] jpeg) throws Exception {
    return (RasterPicture) PictureReader.read(PictureSource.of("a.jpg", jpeg), ReadLimits.DEFAULT);
  }

  /** Linear light with the primaries of P3 under D65, adapted to D50 (from memory). */
  private static byte[] linearP3() {
    ICC_Profile p3 =
        ICC_Profile.getInstance(ICC_Profile.getInstance(ColorSpace.CS_LINEAR_RGB).getData());
    p3.setData(ICC_Profile.icSigRedColorantTag, xyz(0.51512, 0.24120, -0.00105));
    p3.setData(ICC_Profile.icSigGreenColorantTag, xyz(0.29198, 0.69225, 0.04189));
    p3.setData(ICC_Profile.icSigBlueColorantTag, xyz(0.15710, 0.06657, 0.78407));
    return p3.getData();
  }

  private static byte[] xyz(double x, double y, double z) {
    ByteBuffer tag =
        ByteBuffer.allocate(20)
            .put("XYZ ".getBytes(java.nio.charset.StandardCharsets.US_ASCII))
            .putInt(0);
    for (double v : new double[] {x, y, z}) {
      tag.putInt((int) Math.round(v * 65_536));
    }
    return tag.array();
  }

  /** By hand from the chromaticities of SMPTE EG 432-1 and IEC 61966-2-1. */
  private static final double[][] P3_TO_SRGB = {
    {1.22494, -0.22494, 0}, {-0.04206, 1.04206, 0}, {-0.01964, -0.07864, 1.09827}
  };

  /** By hand from the chromaticities of Adobe RGB (1998) and IEC 61966-2-1. */
  private static final double[][] ADOBE_TO_SRGB = {
    {1.39836, -0.39836, 0}, {0, 1, 0}, {0, -0.04293, 1.04293}
  };

  private static void compare(double[][] matrix, double gamma, BufferedImage seen) {
    for (int f = 0; f < FIELDS.length; f++) {
      double[] light = new double[3];
      for (int c = 0; c < 3; c++) {
        light[c] = Math.pow((FIELDS[f] >> (16 - 8 * c) & 255) / 255.0, gamma);
      }
      for (int c = 0; c < 3; c++) {
        double l = matrix[c][0] * light[0] + matrix[c][1] * light[1] + matrix[c][2] * light[2];
        double s = l <= 0.0031308 ? 12.92 * l : 1.055 * Math.pow(l, 1 / 2.4) - 0.055;
        int got = seen.getRGB(16 * f + 8, 8) >> (16 - 8 * c) & 255;
        double wanted = 255 * Math.max(0, Math.min(1, s));
        assertEquals(wanted, got, NEAR, Integer.toHexString(FIELDS[f]) + " channel " + c);
      }
    }
  }

  @Test
  void wideGamutByMatrices() throws Exception {
    RasterPicture p3 = read(jpeg(linearP3()));
    compare(P3_TO_SRGB, 1, p3.image());
    assertTrue(p3.notes().toString().contains("converted to sRGB"), p3.notes()::toString);
    assertNull(p3.jpeg());
  }

  @Test
  void adobeRgb() throws Exception {
    byte[] profile;
    try (InputStream in =
        com.twelvemonkeys.imageio.color.ColorProfiles.class.getResourceAsStream(
            "/profiles/ClayRGB1998.icc")) {
      profile = present(in).readAllBytes();
    }
    // The gamma of Adobe RGB (1998), 4.3.1.2: 2 + 51/256.
    compare(ADOBE_TO_SRGB, 2 + 51 / 256.0, read(jpeg(profile)).image());
  }

  private static InputStream present(InputStream in) {
    assertNotNull(in, "the profile of the decoder's jar");
    return in;
  }

  @Test
  void srgbStaysTheSameJpeg() throws Exception {
    byte[] srgb = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();
    RasterPicture read = read(jpeg(srgb));
    var stored = read.jpeg();
    assertNotNull(stored);
    BufferedImage again = ImageIO.read(new java.io.ByteArrayInputStream(stored.bytes()));
    for (int f = 0; f < FIELDS.length; f++) {
      int a = again.getRGB(16 * f + 8, 8);
      int b = read.image().getRGB(16 * f + 8, 8);
      for (int shift = 0; shift < 24; shift += 8) {
        assertEquals(a >> shift & 255, b >> shift & 255, 2);
      }
    }
    assertTrue(read.notes().isEmpty(), read.notes()::toString);
  }

  /** Against ImageMagick with Little CMS. */
  @ParameterizedTest
  @ValueSource(ints = {0, 2})
  void cmykByItsProfile(int transform) throws Exception {
    byte[] profile;
    try (InputStream in =
        org.apache.pdfbox.pdmodel.PDDocument.class.getResourceAsStream(
            "/org/apache/pdfbox/resources/icc/CGATS001Compat-v2-micro.icc")) {
      profile = present(in).readAllBytes();
    }
    int[][] inks = {{0, 0, 0, 0}, {60, 20, 10, 5}, {20, 90, 120, 30}, {128, 128, 128, 0}};
    byte[] plain = JpegWriter.cmyk(inks, transform);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(plain, 0, 2);
    byte[] body = segment(profile);
    int length = body.length + 2;
    out.writeBytes(new byte[] {(byte) 0xFF, (byte) 0xE2, (byte) (length >> 8), (byte) length});
    out.writeBytes(body);
    out.write(plain, 2, plain.length - 2);
    RasterPicture read = read(out.toByteArray());
    assertTrue(
        read.notes().toString().contains("by the profile in the file"), read.notes()::toString);
    assertNull(read.jpeg());
    Files.write(dir.resolve("a.jpg"), out.toByteArray());
    byte[] srgb = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();
    Files.write(dir.resolve("srgb.icc"), srgb);
    magick("a.jpg", "-intent", "relative", "-profile", "srgb.icc", "a.png");
    BufferedImage other = ImageIO.read(dir.resolve("a.png").toFile());
    BufferedImage own = read.image();
    for (int i = 0; i < inks.length; i++) {
      for (int shift = 0; shift < 24; shift += 8) {
        int wanted = other.getRGB(16 * i + 8, 8) >> shift & 255;
        int got = own.getRGB(16 * i + 8, 8) >> shift & 255;
        assertEquals(wanted, got, 6, Arrays.toString(inks[i]) + " shift " + shift);
      }
    }
  }

  private void magick(String... words) throws IOException, InterruptedException {
    List<String> command = new java.util.ArrayList<>(List.of("convert"));
    command.addAll(List.of(words));
    try {
      assertEquals(0, new ProcessBuilder(command).directory(dir.toFile()).start().waitFor());
    } catch (IOException e) {
      Assumptions.abort("skipped: no convert on this machine");
    }
  }

  @Test
  void cmykWithoutAProfileSaysSo() throws Exception {
    RasterPicture read = read(JpegWriter.cmyk(new int[][] {{60, 20, 10, 5}, {0, 0, 0, 0}}, 0));
    assertTrue(read.notes().toString().contains("states no profile"), read.notes()::toString);
    assertNull(read.jpeg());
  }

  /** By hand: what is left of 255 after cyan 60, and of that after black 5, is 191; and so on. */
  @ParameterizedTest
  @ValueSource(ints = {0, 2})
  void withoutAProfileEachInkTakesItsShare(int transform) throws Exception {
    int[][] inks = {{60, 20, 10, 5}, {0, 0, 0, 0}, {255, 0, 0, 128}};
    BufferedImage image = read(JpegWriter.cmyk(inks, transform)).image();
    int[][] rgb = {{191, 230, 240}, {255, 255, 255}, {0, 127, 127}};
    for (int i = 0; i < rgb.length; i++) {
      int pixel = image.getRGB(16 * i + 8, 8);
      assertEquals(rgb[i][0], pixel >> 16 & 255, 3);
      assertEquals(rgb[i][1], pixel >> 8 & 255, 3);
      assertEquals(rgb[i][2], pixel & 255, 3);
    }
  }
}
