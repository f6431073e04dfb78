package dev.placket.benchmarks.reading;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/** Pictures to measure with: a line drawing in memory, and a large one written row by row. */
public final class LargePicture {
  private LargePicture() {}

  /** A line drawing in the middle of a white or clear page. */
  static BufferedImage drawing(int width, int height, boolean white) {
    int type = white ? BufferedImage.TYPE_INT_RGB : BufferedImage.TYPE_INT_ARGB;
    BufferedImage image = new BufferedImage(width, height, type);
    Graphics2D g = image.createGraphics();
    if (white) {
      g.setColor(Color.WHITE);
      g.fillRect(0, 0, width, height);
    }
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setColor(Color.BLACK);
    g.setStroke(new BasicStroke(width / 400f));
    g.drawOval(width / 8, height / 10, width * 3 / 4, height * 4 / 5);
    for (int i = 1; i < 9; i++) {
      g.drawArc(width / 4, height * i / 10, width / 2, height / 8, 20, 140);
    }
    g.dispose();
    return image;
  }

  /** Writes a PNG of 8-bit red, green, blue and alpha: a slanted line on a clear page. */
  public static Path write(Path file, int width, int height) throws IOException {
    ByteArrayOutputStream part = new ByteArrayOutputStream();
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
      out.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'});
      ByteBuffer head = ByteBuffer.allocate(13).putInt(width).putInt(height);
      chunk(out, "IHDR", head.put((byte) 8).put((byte) 6).array());
      Deflater fast = new Deflater(Deflater.BEST_SPEED);
      try (DeflaterOutputStream deflated = new DeflaterOutputStream(part, fast)) {
        byte[] row = new byte[4 * width + 1];
        for (int y = 0; y < height; y++) {
          Arrays.fill(row, (byte) 0);
          if (y > height / 10 && y < height * 9 / 10) {
            int x = width / 10 + (int) ((long) width * 8 / 10 * y / height);
            Arrays.fill(row, 1 + 4 * x + 3, 1 + 4 * x + 20, (byte) 255);
          }
          deflated.write(row);
          if (part.size() > 1 << 16) {
            chunk(out, "IDAT", part.toByteArray());
            part.reset();
          }
        }
      } finally {
        fast.end();
      }
      chunk(out, "IDAT", part.toByteArray());
      chunk(out, "IEND", new byte[0]);
    }
    return file;
  }

  private static void chunk(OutputStream out, String type, byte[] body) throws IOException {
    byte[] name = type.getBytes(StandardCharsets.US_ASCII);
    CRC32 crc = new CRC32();
    crc.update(name);
    crc.update(body);
    out.write(ByteBuffer.allocate(4).putInt(body.length).array());
    out.write(name);
    out.write(body);
    out.write(ByteBuffer.allocate(4).putInt((int) crc.getValue()).array());
  }
}
