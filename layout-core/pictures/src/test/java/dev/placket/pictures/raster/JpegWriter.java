package dev.placket.pictures.raster;

import java.awt.image.BufferedImage;
import java.awt.image.WritableRaster;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/** A JPEG with the segments before its frame set by hand (ITU T.81, JFIF 1.02). */
final class JpegWriter {
  private final byte[] rest;
  private final ByteArrayOutputStream before = new ByteArrayOutputStream();

  private JpegWriter(byte[] jpeg) {
    this.rest = withoutApps(jpeg);
  }

  static JpegWriter of(BufferedImage image) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try (ImageOutputStream stream = ImageIO.createImageOutputStream(out)) {
      writer.setOutput(stream);
      javax.imageio.ImageWriteParam param = writer.getDefaultWriteParam();
      param.setCompressionMode(javax.imageio.ImageWriteParam.MODE_EXPLICIT);
      param.setCompressionQuality(0.95f);
      writer.write(null, new IIOImage(image, null, null), param);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return new JpegWriter(out.toByteArray());
  }

  /** Fields of 16 by 16 pixels with so much cyan, magenta, yellow, black. */
  static byte[] cmyk(int[][] inks, int transform) throws IOException {
    WritableRaster raster =
        java.awt.image.Raster.createInterleavedRaster(0, 16 * inks.length, 16, 4, null);
    for (int x = 0; x < raster.getWidth(); x++) {
      // Such files hold the inks turned round: 255 is none.
      int[] v = Arrays.stream(inks[x / 16]).map(i -> 255 - i).toArray();
      if (transform == 2) {
        // The transform takes 255 minus cyan for red, which so turned round is the ink itself.
        int[] rgb = inks[x / 16];
        double y = 0.299 * rgb[0] + 0.587 * rgb[1] + 0.114 * rgb[2];
        v =
            new int[] {
              (int) Math.round(y),
              (int) Math.round(128 + (rgb[2] - y) / 1.772),
              (int) Math.round(128 + (rgb[0] - y) / 1.402),
              v[3]
            };
      }
      for (int yy = 0; yy < 16; yy++) {
        raster.setPixel(x, yy, Arrays.stream(v).map(i -> Math.max(0, Math.min(255, i))).toArray());
      }
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try (ImageOutputStream stream = ImageIO.createImageOutputStream(out)) {
      writer.setOutput(stream);
      writer.write(null, new IIOImage(raster, null, null), null);
    } finally {
      writer.dispose();
    }
    JpegWriter jpeg = new JpegWriter(out.toByteArray());
    byte[] body = {'A', 'd', 'o', 'b', 'e', 0, 100, 0, 0, 0, 0, (byte) transform};
    jpeg.segment(0xEE, body);
    return jpeg.bytes();
  }

  JpegWriter jfif(int unit, int x, int y) {
    byte[] body = {
      'J',
      'F',
      'I',
      'F',
      0,
      1,
      2,
      (byte) unit,
      (byte) (x >> 8),
      (byte) x,
      (byte) (y >> 8),
      (byte) y,
      0,
      0
    };
    return segment(0xE0, body);
  }

  JpegWriter exif(byte[] block) {
    byte[] body = new byte[6 + block.length];
    System.arraycopy(new byte[] {'E', 'x', 'i', 'f', 0, 0}, 0, body, 0, 6);
    System.arraycopy(block, 0, body, 6, block.length);
    return segment(0xE1, body);
  }

  JpegWriter segment(int marker, byte[] body) {
    int length = body.length + 2;
    before.writeBytes(new byte[] {(byte) 0xFF, (byte) marker, (byte) (length >> 8), (byte) length});
    before.writeBytes(body);
    return this;
  }

  byte[] bytes() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(new byte[] {(byte) 0xFF, (byte) 0xD8});
    out.writeBytes(before.toByteArray());
    out.writeBytes(rest);
    return out.toByteArray();
  }

  /** Where a marker stands before the first scan. */
  static int find(byte[] jpeg, int marker) {
    int at = 2;
    while ((jpeg[at + 1] & 255) != marker) {
      at += 2 + ((jpeg[at + 2] & 255) << 8 | (jpeg[at + 3] & 255));
    }
    return at;
  }

  private static byte[] withoutApps(byte[] jpeg) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    int at = 2;
    while ((jpeg[at + 1] & 255) != 0xDA) {
      int length = 2 + ((jpeg[at + 2] & 255) << 8 | (jpeg[at + 3] & 255));
      if ((jpeg[at + 1] & 0xF0) != 0xE0) {
        out.write(jpeg, at, length);
      }
      at += length;
    }
    out.write(jpeg, at, jpeg.length - at);
    return out.toByteArray();
  }
}
