package dev.placket.pictures.raster;

import com.twelvemonkeys.imageio.plugins.webp.WebPImageReaderSpi;
import dev.placket.layout.density.PixelDensity;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.fault.Fault;
import java.io.EOFException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageReader;
import org.jspecify.annotations.Nullable;

/**
 * The header of a WebP (RFC 9649): its first picture part, and its Exif part if it has one. Lossy
 * frames are refused: the decoder at hand misses their colours.
 */
final class Webp {
  private final SourceBytes bytes;
  private long width;
  private long height;
  private boolean alpha;
  private boolean moves;
  private @Nullable Exif exif;
  private long frameWidth;
  private long frameHeight;
  private boolean lossy;

  private Webp(SourceBytes bytes) {
    this.bytes = bytes;
  }

  /** A decoder, without its input. */
  static ImageReader decoder() throws IOException {
    return Decoders.of(new WebPImageReaderSpi());
  }

  static RasterHead head(String name, SourceBytes bytes, ReadLimits limits)
      throws PictureException, IOException {
    Webp webp = new Webp(bytes);
    try {
      webp.walk(8 + bytes.u32(4, true));
    } catch (EOFException e) {
      throw RasterHead.damaged(name, "header", "the WebP is cut short");
    }
    if (webp.lossy) {
      throw new PictureException(
          Fault.content(
                  name, "is a WebP with lossy compression, which cannot be decoded exactly here")
              .remedy("save it as PNG")
              .remedy("save it as lossless WebP"));
    }
    RasterHead.checkSize(name, webp.width, webp.height, limits);
    // Decoders make room for the frame, whatever the canvas says.
    if (webp.frameWidth > webp.width || webp.frameHeight > webp.height) {
      throw RasterHead.damaged(
          name,
          "header",
          "a frame of "
              + webp.frameWidth
              + " by "
              + webp.frameHeight
              + " pixels is larger than its canvas");
    }
    List<PictureNote> notes = new ArrayList<>();
    if (webp.moves) {
      notes.add(PictureNote.plain("has several frames; the first is read"));
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
    boolean extended = bytes.is(12, "VP8X");
    if (extended) {
      int flags = bytes.u8(20);
      alpha = (flags & 0x10) != 0;
      moves = (flags & 0x02) != 0;
      width = 1 + (bytes.u32(24, true) & 0xFFFFFF);
      height = 1 + (bytes.u32(26, true) >>> 8);
    }
    long at = 12;
    while (at + 8 <= end && (extended || frameWidth == 0)) {
      long length = bytes.u32(at + 4, true);
      part(at, length);
      at += 8 + length + (length & 1);
    }
    if (!extended) {
      width = frameWidth;
      height = frameHeight;
    }
    bytes.u8(end - 1);
  }

  private void part(long at, long length) throws IOException {
    if (bytes.is(at, "EXIF") && exif == null) {
      int skip = bytes.is(at + 8, "Exif\0") ? 6 : 0;
      exif = Exif.read(bytes, at + 8 + skip, length - skip);
    } else if (bytes.is(at, "ANMF")) {
      // Its frame stands behind 16 bytes, and behind its alpha if it has some.
      long inner = at + 24;
      if (bytes.is(inner, "ALPH")) {
        long skip = bytes.u32(inner + 4, true);
        inner += 8 + skip + (skip & 1);
      }
      frame(inner);
    } else {
      frame(at);
    }
  }

  /** Takes in the size of a coded frame; the largest counts. */
  private void frame(long at) throws IOException {
    if (bytes.is(at, "VP8 ")) {
      lossy = true;
      larger(bytes.u16(at + 14, true) & 0x3FFF, bytes.u16(at + 16, true) & 0x3FFF);
    } else if (bytes.is(at, "VP8L")) {
      long bits = bytes.u32(at + 9, true);
      larger(1 + (bits & 0x3FFF), 1 + (bits >> 14 & 0x3FFF));
      alpha |= (bits >> 28 & 1) == 1;
    }
  }

  private void larger(long w, long h) {
    frameWidth = Math.max(frameWidth, w);
    frameHeight = Math.max(frameHeight, h);
  }
}
