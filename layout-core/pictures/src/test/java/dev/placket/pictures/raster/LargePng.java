package dev.placket.pictures.raster;

import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/** A large PNG of 8-bit greys written row by row: a box of lines on white. */
final class LargePng {
  private LargePng() {}

  /** Lines one pixel wide, from left, top to right, bottom (inclusive), and a slanted one. */
  static void write(Path file, int width, int height, int[] box) throws IOException {
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
      out.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'});
      ByteBuffer head = ByteBuffer.allocate(13).putInt(width).putInt(height);
      out.write(PngWriter.chunk("IHDR", head.put((byte) 8).put(new byte[4]).array()));
      out.write(PngWriter.physical(23622, 23622, 1));
      Parts parts = new Parts(out);
      Deflater fast = new Deflater(Deflater.BEST_SPEED);
      try (DeflaterOutputStream deflated = new DeflaterOutputStream(parts, fast, 1 << 16)) {
        byte[] row = new byte[width + 1];
        for (int y = 0; y < height; y++) {
          draw(row, y, box);
          deflated.write(row);
        }
      } finally {
        fast.end();
      }
      out.write(PngWriter.chunk("IEND", new byte[0]));
    }
  }

  private static void draw(byte[] row, int y, int[] box) {
    Arrays.fill(row, 1, row.length, (byte) 255);
    if (y == box[1] || y == box[3]) {
      // Not from side to side: that would be a frame line.
      Arrays.fill(row, 1 + (box[0] + box[2]) / 2, 1 + box[2], (byte) 0);
    }
    if (y > box[1] && y < box[3]) {
      int across = box[0] + (int) ((long) (box[2] - box[0]) * (y - box[1]) / (box[3] - box[1]));
      row[1 + across] = 0;
      row[1 + box[2]] = y % 2 == 0 ? 0 : row[1 + box[2]];
      row[1 + box[0]] = y % 3 == 0 ? 0 : row[1 + box[0]];
    }
  }

  /** Collects deflated bytes into chunks of 64 KiB. */
  private static final class Parts extends OutputStream {
    private final OutputStream out;
    private final ByteArrayOutputStream part = new ByteArrayOutputStream();

    Parts(OutputStream out) {
      this.out = out;
    }

    @Override
    public void write(int b) throws IOException {
      write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
      part.write(bytes, from, length);
      if (part.size() >= 1 << 16) {
        end();
      }
    }

    private void end() throws IOException {
      out.write(PngWriter.chunk("IDAT", part.toByteArray()));
      part.reset();
    }

    @Override
    public void close() throws IOException {
      end();
    }
  }
}
