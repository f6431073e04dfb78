package dev.placket.layout.image;

import dev.placket.layout.density.PixelDensity;
import java.io.EOFException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The header of a WebP (RFC 9649): its first picture part, and its Exif part if it has one. */
final class Webp {
  private final SourceBytes bytes;
  private long width;
  private long height;
  private boolean alpha;
  private boolean moves;
  private @Nullable Exif exif;

  private Webp(SourceBytes bytes) {
    this.bytes = bytes;
  }

  static RasterHead head(String name, SourceBytes bytes, ReadLimits limits)
      throws PictureException, IOException {
    Webp webp = new Webp(bytes);
    try {
      webp.walk(8 + bytes.u32(4, true));
    } catch (EOFException e) {
      throw RasterHead.damaged(name, "header", "the WebP is cut short");
    }
    RasterHead.checkSize(name, webp.width, webp.height, limits);
    List<String> notes = new ArrayList<>();
    if (webp.moves) {
      notes.add("has several frames; the first is read");
    }
    Exif exif = webp.exif;
    PixelDensity density = exif == null ? null : exif.density();
    return new RasterHead(
        "WebP",
        (int) webp.width,
        (int) webp.height,
        webp.alpha,
        density,
        density == null ? 1 : density.pixelWidthToHeight(),
        exif == null ? 1 : exif.orientation(),
        12,
        notes);
  }

  private void walk(long end) throws IOException {
    long at = 12;
    boolean more = true;
    while (more && at + 8 <= end) {
      long length = bytes.u32(at + 4, true);
      more = part(at, length);
      at += 8 + length + (length & 1);
    }
    bytes.u8(end - 1);
  }

  /** Reads one part; whether others may follow that matter. */
  private boolean part(long at, long length) throws IOException {
    if (bytes.is(at, "VP8X")) {
      int flags = bytes.u8(at + 8);
      alpha = (flags & 0x10) != 0;
      moves = (flags & 0x02) != 0;
      width = 1 + (bytes.u32(at + 12, true) & 0xFFFFFF);
      height = 1 + (bytes.u32(at + 14, true) >>> 8);
      return (flags & 0x08) != 0;
    }
    if (bytes.is(at, "EXIF")) {
      int skip = bytes.is(at + 8, "Exif\0") ? 6 : 0;
      exif = Exif.read(bytes, at + 8 + skip, length - skip);
      return false;
    }
    if (bytes.is(at, "VP8 ") && width == 0) {
      width = bytes.u16(at + 14, true) & 0x3FFF;
      height = bytes.u16(at + 16, true) & 0x3FFF;
      return false;
    }
    if (bytes.is(at, "VP8L") && width == 0) {
      long bits = bytes.u32(at + 9, true);
      width = 1 + (bits & 0x3FFF);
      height = 1 + (bits >> 14 & 0x3FFF);
      alpha = (bits >> 28 & 1) == 1;
      return false;
    }
    return true;
  }
}
