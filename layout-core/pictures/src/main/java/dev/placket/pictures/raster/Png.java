package dev.placket.pictures.raster;

import dev.placket.layout.density.PixelDensity;
import dev.placket.layout.density.Rate;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.base.ReadLimits;
import java.io.EOFException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;
import org.jspecify.annotations.Nullable;

/** The chunks of a PNG (PNG, third edition, W3C 2025) around its pixels. */
final class Png {
  static final int GREY = 0;
  static final int RGB = 2;
  static final int PALETTE = 3;
  static final int GREY_ALPHA = 4;
  static final int RGB_ALPHA = 6;

  /** Chunks longer than this hold nothing that is needed here. */
  private static final int LONGEST = 1 << 16;

  final String name;
  int width;
  int height;
  int depth;
  int colour;
  boolean interlaced;
  byte @Nullable [] palette;
  byte @Nullable [] transparency;

  /** What its values stand for, where that is not sRGB. */
  @Nullable ColourProfile profile;

  /** Where the chunk with the first pixels starts. */
  long data;

  private final SourceBytes bytes;
  private final ReadLimits limits;
  private final boolean whole;
  private @Nullable PixelDensity density;
  private double aspect = 1;
  private int orientation = 1;
  private final List<PictureNote> notes = new ArrayList<>();
  private boolean profiled;
  private long gamma;
  private long @Nullable [] points;
  private long packed;
  private boolean ended;

  private Png(String name, SourceBytes bytes, ReadLimits limits, boolean whole) {
    this.whole = whole;
    this.name = name;
    this.bytes = bytes;
    this.limits = limits;
  }

  /** Reads up to the first pixels, or, as a whole, over them to the end. */
  static Png read(String name, SourceBytes bytes, ReadLimits limits, boolean whole)
      throws PictureException, IOException {
    Png png = new Png(name, bytes, limits, whole);
    long at = 8;
    try {
      while (!png.ended && (whole || png.data == 0)) {
        long length = bytes.u32(at, false);
        if (length > Integer.MAX_VALUE) {
          throw RasterHead.damaged(name, "byte " + at, "a length in the PNG is wrong");
        }
        png.chunk(at, (int) length);
        at += length + 12;
      }
    } catch (EOFException e) {
      throw RasterHead.damaged(name, "byte " + at, "the PNG is cut short, or a length is wrong");
    }
    png.checkPalette();
    png.noteColours();
    if (whole) {
      png.checkPacked();
    }
    return png;
  }

  RasterHead head() {
    boolean alpha = colour == GREY_ALPHA || colour == RGB_ALPHA || transparency != null;
    return new RasterHead("PNG", width, height, alpha, density, aspect, orientation, 4, notes);
  }

  int channels() {
    return switch (colour) {
      case RGB -> 3;
      case GREY_ALPHA -> 2;
      case RGB_ALPHA -> 4;
      default -> 1;
    };
  }

  int bitsPerPixel() {
    return channels() * depth;
  }

  private void chunk(long at, int length) throws PictureException, IOException {
    String type = type(at);
    if (width == 0 && !type.equals("IHDR")) {
      throw RasterHead.damaged(name, "byte " + at, "the PNG has no header");
    }
    switch (type) {
      case "IHDR" -> header(body(at, length, type));
      case "PLTE" -> palette = body(at, length, type);
      case "tRNS" -> transparency = extra(at, length, type, transparency);
      case "pHYs" -> physical(extra(at, length, type, null));
      case "eXIf" -> exif(at, length, type);
      case "iCCP" -> {
        profiled = true;
        profile(extra(at, length, type, null));
      }
      case "sRGB" -> profiled = true;
      case "gAMA" -> {
        byte[] b = extra(at, length, type, null);
        gamma = b == null || b.length != 4 || data != 0 ? gamma : number(b, 0);
      }
      case "cHRM" -> points(extra(at, length, type, null));
      case "IDAT" -> {
        data = data == 0 ? at : data;
        packed += length;
      }
      case "IEND" -> ended = true;
      default -> {
        if (Character.isUpperCase(type.charAt(0))) {
          throw RasterHead.damaged(name, "byte " + at, "the part " + type + " is unknown");
        }
      }
    }
    // The end of the chunk must be there, be it read or not; a look at the header stops at pixels.
    if (whole || data == 0) {
      bytes.u8(at + 11 + length);
    }
  }

  private String type(long at) throws PictureException, IOException {
    byte[] letters = new byte[4];
    for (int i = 0; i < 4; i++) {
      int c = bytes.u8(at + 4 + i);
      if (!((c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z'))) {
        throw RasterHead.damaged(name, "byte " + at, "no part of a PNG begins there");
      }
      letters[i] = (byte) c;
    }
    return new String(letters, StandardCharsets.US_ASCII);
  }

  /** What a needed chunk holds. */
  private byte[] body(long at, int length, String type) throws PictureException, IOException {
    byte[] body = checked(at, length);
    if (body == null) {
      throw RasterHead.damaged(name, "byte " + at, "the part " + type + " is damaged");
    }
    return body;
  }

  /** What a chunk holds that may be done without. */
  private byte @Nullable [] extra(long at, int length, String type, byte @Nullable [] else_)
      throws IOException {
    byte[] body = checked(at, length);
    if (body == null) {
      String damaged = "the part " + type + " is damaged and passed over";
      notes.add(
          type.equals("pHYs")
              ? PictureNote.plain(damaged)
              : PictureNote.changed(damaged + "; export it again"));
      return else_;
    }
    return body;
  }

  private byte @Nullable [] checked(long at, int length) throws IOException {
    if (length > LONGEST) {
      return null;
    }
    byte[] all = new byte[length + 4];
    for (int i = 0; i < all.length; i++) {
      all[i] = (byte) bytes.u8(at + 4 + i);
    }
    CRC32 crc = new CRC32();
    crc.update(all);
    boolean whole = bytes.u32(at + 8 + length, false) == crc.getValue();
    return whole ? java.util.Arrays.copyOfRange(all, 4, all.length) : null;
  }

  private void header(byte[] b) throws PictureException {
    if (b.length != 13 || width != 0) {
      throw RasterHead.damaged(name, "header", "the PNG header is wrong");
    }
    long w = number(b, 0);
    long h = number(b, 4);
    RasterHead.checkSize(name, w, h, limits);
    width = (int) w;
    height = (int) h;
    depth = b[8];
    colour = b[9];
    boolean known =
        switch (colour) {
          case GREY -> depth == 1 || depth == 2 || depth == 4 || depth == 8 || depth == 16;
          case PALETTE -> depth == 1 || depth == 2 || depth == 4 || depth == 8;
          case RGB, GREY_ALPHA, RGB_ALPHA -> depth == 8 || depth == 16;
          default -> false;
        };
    if (!known || b[10] != 0 || b[11] != 0 || b[12] < 0 || b[12] > 1) {
      throw RasterHead.damaged(
          name, "header", "colour type " + colour + " with depth " + depth + " is no PNG");
    }
    interlaced = b[12] == 1;
  }

  private void points(byte @Nullable [] b) {
    if (b == null || b.length != 32 || data != 0) {
      return;
    }
    long[] stated = new long[8];
    for (int i = 0; i < 8; i++) {
      stated[i] = number(b, 4 * i);
    }
    points = stated;
  }

  /** PNG, third edition, 4.4: a profile or sRGB goes before both. */
  private void noteColours() {
    boolean grey = colour == GREY || colour == GREY_ALPHA;
    int off =
        profiled || (gamma == 0 && points == null) ? 0 : StatedColours.off(gamma, points, grey);
    if (off > StatedColours.SEEN) {
      notes.add(
          PictureNote.changed(
              "states other colours than sRGB (gAMA, cHRM), which are not applied: they are off by"
                  + " up to "
                  + off
                  + " levels of 255; save it with a colour profile"));
    }
  }

  private void profile(byte @Nullable [] part) {
    try {
      boolean grey = colour == GREY || colour == GREY_ALPHA;
      profile = part == null || data != 0 ? profile : ColourProfile.ofPng(part, grey);
    } catch (IllegalArgumentException e) {
      notes.add(PictureNote.changed("its colour profile cannot be read; colours are read as sRGB"));
    }
  }

  /** PNG, 11.3.4.3: without a unit the two numbers state the shape of a pixel only. */
  private void physical(byte @Nullable [] b) {
    if (b == null || b.length != 9 || data != 0) {
      return;
    }
    long x = number(b, 0);
    long y = number(b, 4);
    if (x == 0 || y == 0) {
      return;
    }
    aspect = (double) y / x;
    density = b[8] == 1 ? new PixelDensity(Rate.perMetre(x), Rate.perMetre(y)) : null;
  }

  private void exif(long at, int length, String type) throws IOException {
    if (extra(at, length, type, null) == null) {
      return;
    }
    Exif exif = Exif.read(bytes, at + 8, length);
    orientation = exif.orientation();
    PixelDensity stated = exif.density();
    if (density == null && stated != null && aspect == 1) {
      density = stated;
      aspect = stated.pixelWidthToHeight();
    }
  }

  private static long number(byte[] b, int at) {
    long n = 0;
    for (int i = 0; i < 4; i++) {
      n = n << 8 | (b[at + i] & 255);
    }
    return n;
  }

  private void checkPalette() throws PictureException {
    byte[] p = palette;
    byte[] t = transparency;
    if (colour == PALETTE && (p == null || p.length == 0 || p.length % 3 != 0 || p.length > 768)) {
      throw RasterHead.damaged(name, "palette", "the palette is missing or wrong");
    }
    boolean keyed = colour == GREY && t != null && t.length != 2;
    if (keyed || (colour == RGB && t != null && t.length != 6)) {
      throw RasterHead.damaged(name, "tRNS", "the transparent colour is wrong");
    }
  }

  /** Deflate packs at most about 1032 to 1: a header that promises more is lying. */
  private void checkPacked() throws PictureException {
    long needs = ((long) width * bitsPerPixel() + 7) / 8 * height;
    if (packed * 1040 + 4096 < needs) {
      throw RasterHead.damaged(
          name, "header", "states more pixels than its " + packed + " packed bytes can hold");
    }
  }
}
