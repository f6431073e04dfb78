package dev.placket.layout.image;

import dev.placket.layout.density.PixelDensity;
import dev.placket.layout.density.Rate;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;
import org.jspecify.annotations.Nullable;

/** The chunks of a PNG (PNG, third edition, W3C 2025): walked once, pixels left packed. */
final class Png {
  static final int GREY = 0;
  static final int RGB = 2;
  static final int PALETTE = 3;
  static final int GREY_ALPHA = 4;
  static final int RGB_ALPHA = 6;
  private static final int START = 8;

  final String name;
  final byte[] bytes;
  int width;
  int height;
  int depth;
  int colour;
  boolean interlaced;
  byte @Nullable [] palette;
  byte @Nullable [] transparency;
  @Nullable PixelDensity density;
  final List<String> notes = new ArrayList<>();

  /** Where each run of packed pixels starts, and its length. */
  final List<int[]> data = new ArrayList<>();

  private boolean ended;

  private Png(String name, byte[] bytes) {
    this.name = name;
    this.bytes = bytes;
  }

  static Png read(String name, byte[] bytes, ReadLimits limits) throws PictureException {
    Png png = new Png(name, bytes);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    int at = START;
    while (!png.ended) {
      if (bytes.length - at < 12) {
        throw RasterHead.damaged(name, "byte " + at, "the PNG is cut short");
      }
      int length = in.getInt(at);
      if (length < 0 || length > bytes.length - at - 12) {
        throw RasterHead.damaged(name, "byte " + at, "the PNG is cut short, or a length is wrong");
      }
      png.chunk(at, length, limits);
      at += length + 12;
    }
    png.checkWhole();
    return png;
  }

  RasterHead head() {
    boolean alpha = colour == GREY_ALPHA || colour == RGB_ALPHA || transparency != null;
    return new RasterHead("PNG", width, height, alpha, density, 1, notes);
  }

  int channels() {
    return switch (colour) {
      case RGB -> 3;
      case GREY_ALPHA -> 2;
      case RGB_ALPHA -> 4;
      default -> 1;
    };
  }

  private void chunk(int at, int length, ReadLimits limits) throws PictureException {
    String type = new String(bytes, at + 4, 4, StandardCharsets.ISO_8859_1);
    CRC32 crc = new CRC32();
    crc.update(bytes, at + 4, length + 4);
    ByteBuffer body = ByteBuffer.wrap(bytes, at + 8, length).slice();
    boolean whole = ByteBuffer.wrap(bytes).getInt(at + 8 + length) == (int) crc.getValue();
    boolean needed = Character.isUpperCase(type.charAt(0));
    if (!whole) {
      if (needed) {
        throw RasterHead.damaged(name, "byte " + at, "the part " + type + " is damaged");
      }
      notes.add("the part " + type + " is damaged and passed over");
      return;
    }
    if (width == 0 && !type.equals("IHDR")) {
      throw RasterHead.damaged(name, "byte " + at, "the PNG has no header");
    }
    switch (type) {
      case "IHDR" -> header(body, limits);
      case "PLTE" -> palette = rest(body);
      case "tRNS" -> transparency = rest(body);
      case "pHYs" -> physical(body);
      case "iCCP" -> notes.add("its colour profile is not applied; colours are read as sRGB");
      case "IDAT" -> data.add(new int[] {at + 8, length});
      case "IEND" -> ended = true;
      default -> {
        if (needed) {
          throw RasterHead.damaged(name, "byte " + at, "the part " + type + " is unknown");
        }
      }
    }
  }

  private void header(ByteBuffer body, ReadLimits limits) throws PictureException {
    if (body.remaining() != 13 || width != 0) {
      throw RasterHead.damaged(name, "header", "the PNG header is wrong");
    }
    int w = body.getInt();
    int h = body.getInt();
    RasterHead.checkSize(name, w, h, limits);
    width = w;
    height = h;
    depth = body.get();
    colour = body.get();
    int packing = body.get() + body.get();
    int interlace = body.get();
    boolean known =
        switch (colour) {
          case GREY -> depth == 1 || depth == 2 || depth == 4 || depth == 8 || depth == 16;
          case PALETTE -> depth == 1 || depth == 2 || depth == 4 || depth == 8;
          case RGB, GREY_ALPHA, RGB_ALPHA -> depth == 8 || depth == 16;
          default -> false;
        };
    if (!known || packing != 0 || interlace < 0 || interlace > 1) {
      throw RasterHead.damaged(
          name, "header", "colour type " + colour + " with depth " + depth + " is no PNG");
    }
    interlaced = interlace == 1;
  }

  private void physical(ByteBuffer body) {
    if (body.remaining() != 9) {
      return;
    }
    int x = body.getInt();
    int y = body.getInt();
    if (x <= 0 || y <= 0) {
      return;
    }
    if (body.get() == 1) {
      density = new PixelDensity(Rate.perMetre(x), Rate.perMetre(y));
    } else if (x != y) {
      notes.add("its pixels are not square: " + x + " across to " + y + " down");
    }
  }

  private static byte[] rest(ByteBuffer body) {
    byte[] b = new byte[body.remaining()];
    body.get(b);
    return b;
  }

  private void checkWhole() throws PictureException {
    byte[] p = palette;
    byte[] t = transparency;
    if (colour == PALETTE && (p == null || p.length == 0 || p.length % 3 != 0 || p.length > 768)) {
      throw RasterHead.damaged(name, "palette", "the palette is missing or wrong");
    }
    boolean keyed = colour == GREY && t != null && t.length != 2;
    if (keyed || (colour == RGB && t != null && t.length != 6)) {
      throw RasterHead.damaged(name, "tRNS", "the transparent colour is wrong");
    }
    long packed = 0;
    for (int[] run : data) {
      packed += run[1];
    }
    long needs = ((long) width * channels() * depth + 7) / 8 * height;
    // Deflate packs at most about 1032 to 1: a header that promises more is lying.
    if (packed * 1040 + 4096 < needs) {
      throw RasterHead.damaged(
          name, "header", "states more pixels than its " + packed + " packed bytes can hold");
    }
  }
}
