package dev.placket.pictures.raster;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.base.ReadLimits;
import java.io.EOFException;
import java.io.IOException;
import java.util.List;
import javax.imageio.ImageReader;

/**
 * The header of a GIF (GIF 89a): the screen, and where its first frame stands on it.
 *
 * @param left of the first frame
 * @param top of the first frame
 * @param width of the first frame
 * @param height of the first frame
 * @param stray where the flag of a transparent colour stands that is outside the frame's colours,
 *     or −1
 */
record Gif(RasterHead head, int left, int top, int width, int height, long stray) {
  private static final int FRAME = 0x2C;
  private static final int EXTENSION = 0x21;

  /** A decoder, without its input. */
  static ImageReader decoder() throws IOException {
    return Decoders.ofJdk("gif");
  }

  static Gif read(String name, SourceBytes bytes, ReadLimits limits, boolean whole)
      throws PictureException, IOException {
    try {
      int w = bytes.u16(6, true);
      int h = bytes.u16(8, true);
      RasterHead.checkSize(name, w, h, limits);
      int shape = bytes.u8(12);
      // GIF 89a, 18: the shape of a pixel is (n + 15) / 64; 0 says nothing.
      double aspect = shape == 0 ? 1 : (shape + 15) / 64.0;
      long at = 13 + table(bytes.u8(10));
      long flag = -1;
      while (bytes.u8(at) == EXTENSION) {
        if (bytes.u8(at + 1) == 0xF9) {
          flag = (bytes.u8(at + 3) & 1) == 1 ? at + 3 : -1;
        }
        at = afterBlocks(bytes, at + 2);
      }
      if (bytes.u8(at) != FRAME) {
        throw RasterHead.damaged(name, "byte " + at, "the GIF holds no picture");
      }
      int left = bytes.u16(at + 1, true);
      int top = bytes.u16(at + 3, true);
      int fw = bytes.u16(at + 5, true);
      int fh = bytes.u16(at + 7, true);
      RasterHead.checkSize(name, fw, fh, limits);
      List<PictureNote> notes =
          whole && moves(bytes, afterFrame(bytes, at))
              ? List.of(PictureNote.plain("has several frames; the first is read"))
              : List.of();
      int flags = (bytes.u8(at + 9) & 0x80) != 0 ? bytes.u8(at + 9) : bytes.u8(10);
      if ((flags & 0x80) == 0) {
        throw RasterHead.damaged(name, "byte " + at, "the GIF has no table of colours");
      }
      boolean stray = flag >= 0 && bytes.u8(flag + 3) >= 2 << (flags & 7);
      boolean clear = flag >= 0 && !stray;
      boolean part = left > 0 || top > 0 || fw < w || fh < h;
      RasterHead head = new RasterHead("GIF", w, h, clear || part, null, aspect, 1, 2, notes);
      return new Gif(head, left, top, fw, fh, stray ? flag : -1);
    } catch (EOFException e) {
      throw RasterHead.damaged(name, String.valueOf(e.getMessage()), "the GIF is cut short");
    }
  }

  /**
   * The bytes for the decoder, which takes the last colour for clear where the transparent one is
   * outside the table (GIF 89a, 23): no pixel has that colour, so nothing is clear.
   */
  byte[] decodable(byte[] bytes) {
    if (stray < 0) {
      return bytes;
    }
    byte[] plain = bytes.clone();
    plain[(int) stray] &= ~1;
    return plain;
  }

  private static int table(int flags) {
    return (flags & 0x80) == 0 ? 0 : 3 << ((flags & 7) + 1);
  }

  private static long afterFrame(SourceBytes bytes, long at) throws IOException {
    return afterBlocks(bytes, at + 10 + table(bytes.u8(at + 9)) + 1);
  }

  private static long afterBlocks(SourceBytes bytes, long from) throws IOException {
    long at = from;
    int length = bytes.u8(at);
    while (length > 0) {
      at += length + 1;
      length = bytes.u8(at);
    }
    return at + 1;
  }

  private static boolean moves(SourceBytes bytes, long from) throws IOException {
    long at = from;
    try {
      while (bytes.u8(at) == EXTENSION) {
        at = afterBlocks(bytes, at + 2);
      }
      return bytes.u8(at) == FRAME;
    } catch (EOFException e) {
      return false;
    }
  }

  /** The frame alone, as the decoder hands it out. */
  RasterHead frame() {
    return new RasterHead("GIF", width, height, head.alpha(), null, 1, 1, 2, List.of());
  }
}
