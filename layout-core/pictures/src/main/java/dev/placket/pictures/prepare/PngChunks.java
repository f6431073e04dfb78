package dev.placket.pictures.prepare;

import dev.placket.layout.density.PixelDensity;
import dev.placket.layout.density.Rate;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import org.jspecify.annotations.Nullable;

/** The chunks of a PNG that is written, in their order. */
final class PngChunks {
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
  private static final byte METRE = 1;

  private final OutputStream out;

  PngChunks(OutputStream out) {
    this.out = out;
  }

  void header(int width, int height, PngKind kind, @Nullable PixelDensity density)
      throws IOException {
    out.write(SIGNATURE);
    ByteBuffer head = ByteBuffer.allocate(13).putInt(width).putInt(height);
    chunk("IHDR", head.put((byte) kind.depth).put((byte) kind.type).array());
    // Intent 0, perceptual: the pixels are sRGB wherever they came from.
    chunk("sRGB", new byte[1]);
    if (density != null) {
      ByteBuffer physical = ByteBuffer.allocate(9);
      physical.putInt(perMetre(density.x())).putInt(perMetre(density.y())).put(METRE);
      chunk("pHYs", physical.array());
    }
    if (kind.palette.length > 0) {
      palette(kind.palette);
    }
  }

  private void palette(int[] colours) throws IOException {
    ByteBuffer rgb = ByteBuffer.allocate(3 * colours.length);
    int clear = 0;
    for (int c : colours) {
      rgb.put((byte) (c >> 16)).put((byte) (c >> 8)).put((byte) c);
      clear += c >>> 24 < 255 ? 1 : 0;
    }
    chunk("PLTE", rgb.array());
    if (clear > 0) {
      byte[] alphas = new byte[clear];
      for (int i = 0; i < clear; i++) {
        alphas[i] = (byte) (colours[i] >>> 24);
      }
      chunk("tRNS", alphas);
    }
  }

  void data(byte[] bytes, int length) throws IOException {
    chunk("IDAT", bytes, length);
  }

  void end() throws IOException {
    chunk("IEND", new byte[0]);
  }

  private void chunk(String type, byte[] body) throws IOException {
    chunk(type, body, body.length);
  }

  private void chunk(String type, byte[] body, int length) throws IOException {
    byte[] name = type.getBytes(StandardCharsets.US_ASCII);
    CRC32 crc = new CRC32();
    crc.update(name);
    crc.update(body, 0, length);
    out.write(ByteBuffer.allocate(4).putInt(length).array());
    out.write(name);
    out.write(body, 0, length);
    out.write(ByteBuffer.allocate(4).putInt((int) crc.getValue()).array());
  }

  private static int perMetre(Rate rate) {
    return (int) Math.max(1, Math.min(Integer.MAX_VALUE, Math.round(rate.perMetre())));
  }
}
