package dev.placket.pictures.raster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.pictures.PictureReader;
import dev.placket.pictures.RasterPicture;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.base.RowReader;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.DeflaterOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A PNG's profile is applied. The JDK's profile of linear RGB makes the outcome known: the transfer
 * function of IEC 61966-2-1, from memory.
 */
class ColourProfileTest {
  private static final int STEPS = 256;

  @ParameterizedTest
  @ValueSource(ints = {2, 6})
  void linearLightBecomesSrgb(int colour) throws Exception {
    int channels = PngWriter.channels(colour);
    PngWriter png = new PngWriter(STEPS, 1, 8, colour);
    png.before.add(part(ICC_Profile.getInstance(ColorSpace.CS_LINEAR_RGB).getData()));
    int[] samples = new int[STEPS * channels];
    for (int i = 0; i < samples.length; i++) {
      samples[i] = i % channels == 3 ? 128 : i / channels;
    }
    RasterPicture read = read(png.write(samples));
    int[] row = new int[STEPS];
    try (RowReader rows = read.rows()) {
      rows.next(row);
    }
    for (int v = 0; v < STEPS; v++) {
      assertEquals(encoded(v / 255.0), row[v] & 255, 1, "value " + v);
      assertEquals(row[v] & 255, row[v] >> 16 & 255, 1, "grey stays grey");
      assertEquals(colour == 6 ? 128 : 255, row[v] >>> 24, "alpha is none of its business");
    }
    assertFalse(read.notes().toString().contains("profile"), read.notes()::toString);
  }

  @Test
  void srgbStaysToTheBit() throws Exception {
    PngWriter png = new PngWriter(STEPS, 1, 8, 2);
    png.before.add(part(ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData()));
    int[] samples = new int[3 * STEPS];
    Arrays.setAll(samples, i -> i * 7 % 256);
    int[] row = new int[STEPS];
    try (RowReader rows = read(png.write(samples)).rows()) {
      rows.next(row);
    }
    for (int x = 0; x < STEPS; x++) {
      int rgb = samples[3 * x] << 16 | samples[3 * x + 1] << 8 | samples[3 * x + 2];
      assertEquals(0xFF000000 | rgb, row[x]);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 40, 130, 400})
  void aBrokenProfileIsNotedAndPassedOver(int kept) throws Exception {
    byte[] whole = ICC_Profile.getInstance(ColorSpace.CS_LINEAR_RGB).getData();
    PngWriter png = new PngWriter(2, 1, 8, 2);
    png.before.add(part(Arrays.copyOf(whole, kept)));
    RasterPicture read = read(png.write(new int[] {10, 20, 30, 200, 210, 220}));
    assertTrue(read.notes().toString().contains("profile cannot be read"), read.notes()::toString);
    int[] row = new int[2];
    try (RowReader rows = read.rows()) {
      rows.next(row);
    }
    assertEquals(0xFF0A141E, row[0]);
  }

  @Test
  void aProfileForOtherChannelsIsPassedOver() throws Exception {
    PngWriter png = new PngWriter(2, 1, 8, 0);
    png.before.add(part(ICC_Profile.getInstance(ColorSpace.CS_LINEAR_RGB).getData()));
    RasterPicture read = read(png.write(new int[] {10, 200}));
    assertTrue(read.notes().toString().contains("profile cannot be read"), read.notes()::toString);
  }

  private static RasterPicture read(byte[] png) throws PictureException {
    return (RasterPicture)
        PictureReader.read(PictureSource.of("part.png", png), ReadLimits.DEFAULT);
  }

  private static byte[] part(byte[] profile) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes("profile\0\0".getBytes(StandardCharsets.ISO_8859_1));
    try (DeflaterOutputStream packed = new DeflaterOutputStream(out)) {
      packed.write(profile);
    }
    return PngWriter.chunk("iCCP", out.toByteArray());
  }

  /** From light to the encoded value: IEC 61966-2-1. */
  private static double encoded(double light) {
    double v = light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
    return Math.round(255 * v);
  }
}
