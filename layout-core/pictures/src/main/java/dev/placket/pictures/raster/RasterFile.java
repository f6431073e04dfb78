package dev.placket.pictures.raster;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.base.RowReader;
import dev.placket.pictures.base.StoredJpeg;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.ReadLimit;
import dev.placket.pictures.ink.InkFinder;
import dev.placket.pictures.rows.SquareRows;
import dev.placket.pictures.rows.TurnedRows;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageReader;
import org.jspecify.annotations.Nullable;

/**
 * A raster in its file: its header, and its rows as often as they are asked for. A PNG is read from
 * its source as a stream; of the others the packed bytes are held.
 */
public final class RasterFile {
  /** Compression leaves noise beside the lines; lossless formats have none. */
  private static final int NOISY = 40;

  public static final int CLEAN = 16;

  /** No band of rows takes more than this, so that memory is left for the rest. */
  private static final long BAND = 80L << 20;

  private static final long LEAST_BAND = 4L << 20;

  private final String name;
  private final RasterFormat format;
  private final PictureSource source;
  private final ReadLimits limits;
  private final RasterHead head;
  private final @Nullable Png png;
  private final @Nullable Gif gif;
  private byte @Nullable [] held;

  private RasterFile(
      RasterFormat format,
      PictureSource source,
      ReadLimits limits,
      RasterHead head,
      @Nullable Png png,
      @Nullable Gif gif) {
    this.name = source.name();
    this.format = format;
    this.source = source;
    this.limits = limits;
    this.head = head;
    this.png = png;
    this.gif = gif;
  }

  /**
   * Reads the header.
   *
   * @param whole whether to walk over the pixels to what stands behind them
   */
  public static RasterFile open(
      RasterFormat format,
      PictureSource source,
      SourceBytes bytes,
      ReadLimits limits,
      boolean whole)
      throws PictureException, IOException {
    String name = source.name();
    try {
      if (format == RasterFormat.PNG) {
        Png png = Png.read(name, bytes, limits, whole);
        return new RasterFile(format, source, limits, png.head(), png, null);
      }
      if (format == RasterFormat.GIF) {
        Gif gif = Gif.read(name, bytes, limits, whole);
        return new RasterFile(format, source, limits, gif.head(), null, gif);
      }
      RasterHead head = format.head(name, bytes, limits, whole);
      return new RasterFile(format, source, limits, head, null, null);
    } catch (EOFException e) {
      throw RasterHead.damaged(name, String.valueOf(e.getMessage()), "the file is cut short");
    }
  }

  /** What the header states. */
  public RasterHead head() {
    return head;
  }

  /** The name of the source, for messages. */
  public String name() {
    return name;
  }

  /** What the header says, what pixels show, in words. */
  public List<PictureNote> notes(InkFinder found) {
    List<PictureNote> notes = new ArrayList<>(head.notes());
    byte[] bytes = held;
    if (format == RasterFormat.JPEG && bytes != null) {
      notes.addAll(Jpeg.profileNotes(bytes, JpegCopy.components(bytes)));
    }
    if (head.aspect() != 1) {
      notes.add(
          PictureNote.plain(
              String.format(
                  Locale.ROOT,
                  "its pixels are not square, %.4g times as wide as high; its shape is corrected",
                  head.seenAspect())));
    }
    if (head.orientation() > 1) {
      notes.add(PictureNote.plain("is rotated upright, as its file states"));
    }
    if (found.insideFrame() != null) {
      notes.add(
          PictureNote.plain(
              "a frame line is drawn round the picture and counts as ink; without it the drawing"
                  + " would be placed larger"));
    }
    return notes;
  }

  /** How far from the colour of the ground a pixel of this format may be by noise alone. */
  int tolerance() {
    return format == RasterFormat.JPEG ? NOISY : CLEAN;
  }

  /** The rows as the file holds them. */
  public RowReader stored() throws PictureException {
    if (png != null) {
      RowReader rows = PngRows.open(png, source, limits);
      return png.profile == null ? rows : png.profile.applied(rows);
    }
    byte[] bytes = held();
    RasterHead decoded = gif == null ? head : gif.frame();
    int rows = bandHeight(decoded, bytes.length);
    ImageReader reader;
    try {
      reader = Decoders.open(format, bytes);
    } catch (IOException | RuntimeException e) {
      throw BandRows.damaged(name, head.format(), e);
    }
    JpegInks inks = format == RasterFormat.JPEG ? JpegInks.of(bytes) : null;
    RowReader bands = new BandRows(name, reader, decoded, rows, head.multiplied(), inks);
    return gif == null ? bands : OnScreenRows.of(bands, gif);
  }

  /** The rows turned as the file says it is to be seen. */
  RowReader seen() throws PictureException {
    return TurnedRows.turned(stored(), head.orientation(), name, limits);
  }

  /** Refuses what could be looked at as stored, but not turned and squared within the limits. */
  public void checkSeen() throws PictureException {
    long w = SquareRows.stretched(head.seenWidth(), head.seenAspect());
    long h = SquareRows.stretched(head.seenHeight(), 1 / head.seenAspect());
    RasterHead.checkSize(name, w, h, limits);
    if (head.orientation() > 2) {
      limits.checkMemory(name, 4L * head.width() * head.height());
    }
  }

  /** The rows turned, and with square pixels. */
  public RowReader square() throws PictureException {
    return SquareRows.of(seen(), head.seenAspect());
  }

  /** Ground and ink in pixels as stored. */
  public InkFinder ink() throws PictureException {
    return InkFinder.find(this::stored, tolerance());
  }

  /** So many rows as fit a share of what memory is left beside the file itself. */
  private int bandHeight(RasterHead decoded, long bytes) throws PictureException {
    long turned = head.orientation() > 2 ? 4L * head.width() * head.height() : 0;
    long left = Math.min(BAND, limits.memory() - bytes - turned);
    long row = (long) decoded.width() * decoded.cost();
    // WebP is decoded as a whole, whatever part is asked for.
    long rows = format == RasterFormat.WEBP ? decoded.height() : Math.max(1, left / row);
    limits.checkMemory(
        name, bytes + turned + Math.max(LEAST_BAND, Math.min(rows, decoded.height()) * row));
    return (int) Math.min(rows, decoded.height());
  }

  private byte[] held() throws PictureException {
    byte[] bytes = held;
    if (bytes == null) {
      bytes = bytes(source, limits);
      if (format == RasterFormat.JPEG) {
        Jpeg.checkEnd(name, bytes);
      }
      if (format == RasterFormat.BMP) {
        BmpKind.checkSpare(name, bytes);
      }
      if (gif != null) {
        bytes = gif.decodable(bytes);
      }
      held = bytes;
    }
    return bytes;
  }

  /**
   * The file as a JPEG to be stored elsewhere, or null if it is none, or its pixels have to be
   * turned, squared or brought into sRGB first.
   */
  public @Nullable StoredJpeg jpeg() throws PictureException {
    if (format != RasterFormat.JPEG || head.orientation() != 1 || head.aspect() != 1) {
      return null;
    }
    StoredJpeg copy = JpegCopy.of(held());
    byte[] profile = copy == null ? null : JpegCopy.profile(held());
    boolean srgb =
        copy != null && (profile == null || ColourProfile.isSrgb(profile, copy.grey() ? 1 : 3));
    return srgb ? copy : null;
  }

  /** All bytes of a source, within the limits. */
  public static byte[] bytes(PictureSource source, ReadLimits limits) throws PictureException {
    if (source instanceof MemorySource memory) {
      return memory.bytes();
    }
    long most = Math.min(Math.min(limits.bytes(), limits.memory()), Integer.MAX_VALUE - 16);
    try (InputStream in = source.open()) {
      byte[] bytes = in.readNBytes((int) most + 1);
      if (bytes.length > most) {
        throw PictureException.over(
            limits.bytes() <= limits.memory() ? ReadLimit.BYTES : ReadLimit.MEMORY,
            Fault.limit(source.name(), "has more than " + most + " bytes, the limit")
                .remedy("export it smaller"));
      }
      return bytes;
    } catch (IOException e) {
      throw PictureException.cannotOpen(source.name(), e);
    }
  }
}
