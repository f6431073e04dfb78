package dev.placket.benchmarks.reading;

import dev.placket.benchmarks.outside.Row;
import dev.placket.benchmarks.outside.Times;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.ImageIO;

/** A photograph as PNG with a colour profile, against the same without. */
public final class ProfileTimes {
  private static final int SIDE = 2000;

  /** Behind the signature and the header chunk. */
  private static final int AFTER_HEADER = 33;

  private ProfileTimes() {}

  /** The whole probe of both: all rows are read. */
  public static List<Row> measure() throws IOException {
    byte[] plain = photograph();
    byte[] profiled = profiled(plain);
    double without = Times.ofLong(() -> probe(plain));
    double with = Times.ofLong(() -> probe(profiled));
    return List.of(
        Row.time("4 million pixels of PNG with a profile", with, without, "without it", 1.3));
  }

  private static Object probe(byte[] png) throws Exception {
    return PictureReader.probe(PictureSource.of("photo.png", png), ReadLimits.DEFAULT);
  }

  /** Soft colours with a grain. */
  private static byte[] photograph() throws IOException {
    BufferedImage image = new BufferedImage(SIDE, SIDE, BufferedImage.TYPE_INT_RGB);
    Random random = new Random(1);
    for (int y = 0; y < SIDE; y++) {
      for (int x = 0; x < SIDE; x++) {
        int grain = random.nextInt(8);
        int r = 60 + x * 120 / SIDE + grain;
        int g = 40 + y * 150 / SIDE + grain;
        image.setRGB(x, y, r << 16 | g << 8 | 90 + grain);
      }
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, "png", out);
    return out.toByteArray();
  }

  private static byte[] profiled(byte[] png) throws IOException {
    ByteArrayOutputStream part = new ByteArrayOutputStream();
    part.writeBytes("iCCPprofile\0\0".getBytes(StandardCharsets.ISO_8859_1));
    try (DeflaterOutputStream packed = new DeflaterOutputStream(part)) {
      packed.write(ICC_Profile.getInstance(ColorSpace.CS_LINEAR_RGB).getData());
    }
    CRC32 crc = new CRC32();
    crc.update(part.toByteArray());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (DataOutputStream data = new DataOutputStream(out)) {
      data.write(png, 0, AFTER_HEADER);
      data.writeInt(part.size() - 4);
      data.write(part.toByteArray());
      data.writeInt((int) crc.getValue());
      data.write(Arrays.copyOfRange(png, AFTER_HEADER, png.length));
    }
    return out.toByteArray();
  }
}
