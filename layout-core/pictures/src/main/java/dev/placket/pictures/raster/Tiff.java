package dev.placket.pictures.raster;

import com.twelvemonkeys.imageio.plugins.jpeg.JPEGImageReaderSpi;
import com.twelvemonkeys.imageio.plugins.tiff.TIFFImageReaderSpi;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.base.ReadLimits;
import java.io.EOFException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageReader;

/** The header of a TIFF (TIFF 6.0): its first directory, and how many follow. */
final class Tiff {
  private static final int MOST_PAGES = 10_000;
  private static final int SEPARATED = 5;

  private Tiff() {}

  /** A decoder, without its input. */
  static ImageReader decoder() throws IOException {
    // Pictures inside a TIFF may be JPEGs.
    Decoders.register(new JPEGImageReaderSpi());
    return Decoders.of(new TIFFImageReaderSpi());
  }

  static RasterHead head(String name, SourceBytes bytes, ReadLimits limits, boolean whole)
      throws PictureException, IOException {
    boolean little = bytes.u8(0) == 'I';
    TiffDirectory d;
    List<PictureNote> notes = new ArrayList<>();
    try {
      d = TiffDirectory.read(bytes, 0, Long.MAX_VALUE, little);
      int pages = whole ? pages(bytes, d.next, little) : 1;
      if (pages > 1) {
        notes.add(PictureNote.plain("has " + pages + " pages; the first is read"));
      }
    } catch (EOFException e) {
      throw RasterHead.damaged(name, "header", "the TIFF is cut short");
    }
    long width = d.number(TiffDirectory.WIDTH, 0);
    long height = d.number(TiffDirectory.HEIGHT, 0);
    RasterHead.checkSize(name, width, height, limits);
    long bits = d.number(TiffDirectory.BITS, 1);
    long samples = d.number(TiffDirectory.SAMPLES, 1);
    if (bits > 64 || samples > 64) {
      throw RasterHead.damaged(
          name, "header", "states " + samples + " samples of " + bits + " bits for a pixel");
    }
    long tile = d.number(TiffDirectory.TILE_WIDTH, 1) * d.number(TiffDirectory.TILE_HEIGHT, 1);
    limits.checkMemory(name, tile * samples * ((bits + 7) / 8));
    TiffKind.check(name, d);
    if (whole) {
      TiffStrips.check(name, bytes, d, little);
    }
    boolean inks = d.number(TiffDirectory.PHOTOMETRIC, 1) == SEPARATED;
    if (inks) {
      notes.add(
          PictureNote.plain(
              "is in printing colours (CMYK), converted to the nearest screen colours"));
    }
    if (d.perMillimetre()) {
      notes.add(
          PictureNote.plain(
              "states one pixel to the millimetre, which stands for an unknown density; taken so"));
    }
    return new RasterHead(
        "TIFF",
        (int) width,
        (int) height,
        d.has(TiffDirectory.EXTRA),
        d.density(),
        d.aspect(),
        d.orientation(),
        TiffKind.multiplied(d),
        (int) (samples * ((bits + 7) / 8)) + 8,
        notes);
  }

  private static int pages(SourceBytes bytes, long next, boolean little) throws IOException {
    Set<Long> seen = new HashSet<>();
    int pages = 1;
    long at = next;
    while (at != 0 && seen.add(at) && pages < MOST_PAGES) {
      try {
        int entries = bytes.u16(at, little);
        at = bytes.u32(at + 2 + 12L * entries, little);
      } catch (EOFException e) {
        return pages;
      }
      pages++;
    }
    return pages;
  }
}
