package dev.placket.pictures;

import dev.placket.layout.density.PixelSize;
import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.ink.GroundFinder;
import dev.placket.pictures.ink.InkFinder;
import dev.placket.pictures.raster.MemorySource;
import dev.placket.pictures.raster.RasterFile;
import dev.placket.pictures.raster.RasterFormat;
import dev.placket.pictures.raster.RasterHead;
import dev.placket.pictures.raster.SourceBytes;
import dev.placket.pictures.rows.Pixels;
import dev.placket.pictures.rows.SeenBox;
import dev.placket.pictures.typeface.Typefaces;
import java.io.IOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads pictures, deciding by their bytes what they are, whatever their names end with. */
public final class PictureReader {
  private PictureReader() {}

  /**
   * Whether a file's name ends as those of the formats that are read do, in capitals or not: what
   * to pick from a folder. What a picked file really is, its bytes tell.
   */
  public static boolean isNamedAsPicture(String fileName) {
    return RasterFormat.isUsualName(fileName);
  }

  /** The words of all formats that are read, for messages: "SVG, PNG, ... or WebP". */
  public static String formats() {
    return RasterFormat.list();
  }

  /**
   * Reads a picture, to be placed and prepared; its packed bytes are held.
   *
   * @throws PictureException if it cannot be read, is no picture, is blank or damaged, reaches
   *     outside itself, or asks for more than the limits; its message is for the designer
   */
  public static Picture read(PictureSource source, ReadLimits limits) throws PictureException {
    return read(source, limits, Typefaces.SHIPPED);
  }

  /**
   * The same, with typefaces for the text of drawings.
   *
   * @throws PictureException if a file cannot be used; its message names the file and the fault
   */
  public static Picture read(PictureSource source, ReadLimits limits, Typefaces typefaces)
      throws PictureException {
    return read(source, limits, typefaces, false);
  }

  /**
   * Reads a swatch: the same, but white all over is white cloth, not blank.
   *
   * @throws PictureException as {@link #read}, also where it is clear all over
   */
  public static Picture readSwatch(PictureSource source, ReadLimits limits, Typefaces typefaces)
      throws PictureException {
    return read(source, limits, typefaces, true);
  }

  private static Picture read(
      PictureSource source, ReadLimits limits, Typefaces typefaces, boolean swatch)
      throws PictureException {
    String name = source.name();
    byte[] bytes = RasterFile.bytes(source, limits);
    RasterFormat format = known(name, bytes);
    List<PictureNote> notes = ending(format, name);
    if (format == RasterFormat.SVG || format == RasterFormat.SVGZ) {
      return drawing(name, bytes, format, notes, limits, typefaces);
    }
    if (format == RasterFormat.PDF) {
      return page(new MemorySource(name, bytes), limits, typefaces);
    }
    RasterFile file = open(format, new MemorySource(name, bytes), limits, true);
    return RasterPicture.read(digest(bytes), file, notes, swatch);
  }

  /**
   * Tells what is known of a picture; a PNG that is not interlaced streams, whatever its size.
   *
   * @throws PictureException as {@link #read}, but a blank picture is probed
   */
  public static PictureProbe probe(PictureSource source, ReadLimits limits)
      throws PictureException {
    return probe(source, limits, Typefaces.SHIPPED);
  }

  /**
   * The same, with typefaces for the text of drawings.
   *
   * @throws PictureException if a file cannot be used; its message names the file and the fault
   */
  public static PictureProbe probe(PictureSource source, ReadLimits limits, Typefaces typefaces)
      throws PictureException {
    String name = source.name();
    RasterFormat format = known(name, first(source));
    List<PictureNote> notes = ending(format, name);
    if (format == RasterFormat.SVG || format == RasterFormat.SVGZ) {
      byte[] bytes = RasterFile.bytes(source, limits);
      return probe(drawing(name, bytes, format, notes, limits, typefaces));
    }
    if (format == RasterFormat.PDF) {
      return probe((Drawing) page(source, limits, typefaces));
    }
    RasterFile file = open(format, source, limits, true);
    RasterHead head = file.head();
    InkFinder found = file.ink();
    notes.addAll(file.notes(found));
    if (found.box() == null) {
      notes.add(PictureNote.plain("is blank: nothing is drawn on its background"));
    }
    return new PictureProbe(
        name,
        head.format(),
        new PixelSize(head.seenWidth(), head.seenHeight()),
        null,
        head.seenDensity(),
        head.seenAspect(),
        found.look().ground(),
        seen(found.box(), head),
        null,
        seen(found.insideFrame(), head),
        notes);
  }

  private static Picture page(PictureSource source, ReadLimits limits, Typefaces typefaces)
      throws PictureException {
    PictureFile file = PictureFile.open(source, limits, typefaces);
    int pages = file.parts().size();
    if (pages > 1) {
      // Who asks for a file as a whole cannot name a page of it.
      throw new PictureException(
          Fault.content(source.name(), "has " + pages + " pages, where one drawing is asked for")
              .remedy("export the page as a file of its own"));
    }
    return file.read(file.whole(), false, Set.of());
  }

  private static PictureProbe probe(Drawing d) {
    return new PictureProbe(
        d.name(),
        d.format(),
        null,
        d.viewBox(),
        null,
        1,
        d.ground(),
        d.inkedBox(),
        d.groundedBox(),
        null,
        d.notes());
  }

  /** The format of a file by its first bytes. */
  static RasterFormat format(PictureSource source) throws PictureException {
    return known(source.name(), first(source));
  }

  /**
   * Reads the header of a raster and nothing else.
   *
   * @throws PictureException if it is no raster, or its header is damaged or beyond the limits
   */
  public static PictureHead head(PictureSource source, ReadLimits limits) throws PictureException {
    try (SourceBytes bytes = new SourceBytes(source)) {
      RasterFormat format = known(source.name(), bytes.first(RasterFormat.ENOUGH));
      if (format == RasterFormat.SVG || format == RasterFormat.SVGZ || format == RasterFormat.PDF) {
        throw new PictureException(
            Fault.content(source.name(), "is a drawing, which has no pixels")
                .remedy("read it as a whole"));
      }
      return PictureHead.of(RasterFile.open(format, source, bytes, limits, false).head());
    } catch (IOException e) {
      throw PictureException.cannotOpen(source.name(), e);
    }
  }

  /**
   * Where the ink is in pixels that are in memory already, found from the edges inward; null if
   * there is none, all of them where the ground is neither clear nor white. O(pixels) at worst.
   *
   * @param argb row by row, {@code 0xAARRGGBB}, 8-bit sRGB with alpha not multiplied in; not
   *     changed
   * @throws IllegalArgumentException if these are not so many pixels
   */
  public static @Nullable InkedBox inkedBox(int width, int height, int[] argb) {
    if (width < 1 || height < 1 || argb.length != (long) width * height) {
      throw new IllegalArgumentException(
          argb.length + " pixels are not " + width + " by " + height);
    }
    return new GroundFinder(new Pixels(width, height, argb), RasterFile.CLEAN).box();
  }

  private static @Nullable InkedBox seen(@Nullable InkedBox stored, RasterHead head) {
    return stored == null
        ? null
        : SeenBox.turned(stored, head.width(), head.height(), head.orientation());
  }

  private static RasterFile open(
      RasterFormat format, PictureSource source, ReadLimits limits, boolean whole)
      throws PictureException {
    try (SourceBytes bytes = new SourceBytes(source)) {
      return RasterFile.open(format, source, bytes, limits, whole);
    } catch (IOException e) {
      throw PictureException.cannotOpen(source.name(), e);
    }
  }

  private static byte[] first(PictureSource source) throws PictureException {
    try (SourceBytes bytes = new SourceBytes(source)) {
      return bytes.first(RasterFormat.ENOUGH);
    } catch (IOException e) {
      throw PictureException.cannotOpen(source.name(), e);
    }
  }

  private static RasterFormat known(String name, byte[] first) throws PictureException {
    RasterFormat format = RasterFormat.of(first);
    if (format == null) {
      throw new PictureException(
          Fault.content(
                  name,
                  first.length == 0
                      ? "is empty"
                      : RasterFormat.isBigTiff(first)
                          ? "is a BigTIFF, a kind for files over 4 GB that is not read"
                          : "is no picture that can be read here")
              .remedy("export it as " + RasterFormat.list()));
    }
    return format;
  }

  private static List<PictureNote> ending(RasterFormat format, String name) {
    List<PictureNote> notes = new ArrayList<>();
    String wrong = format.wrongEnding(name);
    if (wrong != null) {
      notes.add(PictureNote.plain(wrong));
    }
    return notes;
  }

  private static Drawing drawing(
      String name,
      byte[] bytes,
      RasterFormat format,
      List<PictureNote> notes,
      ReadLimits limits,
      Typefaces typefaces)
      throws PictureException {
    byte[] plain = format == RasterFormat.SVGZ ? Gunzip.all(name, bytes, limits) : bytes;
    return DrawingReader.read(
        name, null, plain, format.word, digest(bytes), notes, limits, typefaces);
  }

  /** The bytes of a drawing, unpacked. */
  static byte[] plain(PictureSource source, ReadLimits limits) throws PictureException {
    byte[] bytes = RasterFile.bytes(source, limits);
    return RasterFormat.of(bytes) == RasterFormat.SVGZ
        ? Gunzip.all(source.name(), bytes, limits)
        : bytes;
  }

  /** A part of a drawing, by the identifier of its element. */
  static Drawing part(PictureSource source, String id, ReadLimits limits, Typefaces typefaces)
      throws PictureException {
    String name = source.name() + "#" + id;
    byte[] bytes = RasterFile.bytes(source, limits);
    RasterFormat format = known(source.name(), bytes);
    byte[] plain = format == RasterFormat.SVGZ ? Gunzip.all(name, bytes, limits) : bytes;
    List<PictureNote> notes = ending(format, source.name());
    return DrawingReader.read(
        name, id, plain, format.word, digest(bytes), notes, limits, typefaces);
  }

  static String digest(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
