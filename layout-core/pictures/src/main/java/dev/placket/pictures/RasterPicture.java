package dev.placket.pictures;

import dev.placket.layout.density.PixelDensity;
import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.base.Ground;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.base.RowReader;
import dev.placket.pictures.base.StoredJpeg;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.ink.GroundLook;
import dev.placket.pictures.ink.InkFinder;
import dev.placket.pictures.raster.RasterFile;
import dev.placket.pictures.raster.RasterHead;
import dev.placket.pictures.rows.Pixels;
import dev.placket.pictures.rows.SeenBox;
import dev.placket.pictures.rows.SquareRows;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A picture made of pixels, turned as its file says it is to be seen, and with square pixels: where
 * the file states pixels of another shape, the shorter way is stretched.
 */
public final class RasterPicture implements Picture {
  private final String digest;
  private final RasterFile file;
  private final RasterHead head;
  private final List<PictureNote> notes;
  private final int width;
  private final int height;
  private final GroundLook look;
  private final InkedBox ink;
  private final @Nullable InkedBox insideFrame;

  private RasterPicture(
      String digest, RasterFile file, List<PictureNote> notes, InkFinder found, InkedBox box) {
    this.digest = digest;
    this.file = file;
    this.head = file.head();
    this.notes = List.copyOf(notes);
    this.width = SquareRows.stretched(head.seenWidth(), head.seenAspect());
    this.height = SquareRows.stretched(head.seenHeight(), 1 / head.seenAspect());
    this.look = found.look();
    this.ink = squared(box);
    InkedBox inside = found.insideFrame();
    this.insideFrame = inside == null ? null : squared(inside);
  }

  /**
   * Looks at all rows of a file, without keeping any.
   *
   * @param swatch whether a white picture is white cloth rather than blank
   */
  static RasterPicture read(String digest, RasterFile file, List<PictureNote> notes, boolean swatch)
      throws PictureException {
    file.checkSeen();
    InkFinder found = file.ink();
    if (swatch && found.box() == null && found.look().ground() == Ground.OPAQUE_WHITE) {
      found = InkFinder.pale(file::stored, found.look());
    }
    InkedBox box = found.box();
    if (box == null) {
      throw new PictureException(
          Fault.content(file.name(), "is blank").remedy("export the picture again"));
    }
    List<PictureNote> all = new ArrayList<>(notes);
    all.addAll(file.notes(found));
    return new RasterPicture(digest, file, all, found, box);
  }

  private InkedBox squared(InkedBox stored) {
    InkedBox seen = SeenBox.turned(stored, head.width(), head.height(), head.orientation());
    return SeenBox.stretched(seen, head.seenWidth(), head.seenHeight(), width, height);
  }

  /** Reads all rows from the top on each call: rotated upright, with square pixels. */
  public RowReader rows() {
    try {
      return file.square();
    } catch (PictureException e) {
      throw new IllegalStateException("was read before: " + e.getMessage(), e);
    }
  }

  /**
   * The picture as the JPEG of its file, where its pixels are the same as those of {@link #rows};
   * null if its file is no JPEG, or the pixels had to be turned, squared or brought into sRGB.
   */
  public @Nullable StoredJpeg jpeg() {
    try {
      return file.jpeg();
    } catch (PictureException e) {
      throw new IllegalStateException("was read before: " + e.getMessage(), e);
    }
  }

  /** What counts as ground. */
  GroundLook look() {
    return look;
  }

  private Pixels decode() {
    try (RowReader rows = rows()) {
      return Pixels.of(rows);
    } catch (PictureException e) {
      throw new IllegalStateException("was read before: " + e.getMessage(), e);
    }
  }

  @Override
  public String name() {
    return file.name();
  }

  @Override
  public String format() {
    return head.format();
  }

  @Override
  public String digest() {
    return digest;
  }

  @Override
  public List<PictureNote> notes() {
    return notes;
  }

  /** In pixels from the top left; the whole picture where its ground is neither clear nor white. */
  @Override
  public InkedBox inkedBox() {
    return ink;
  }

  /** Pixels across. */
  public int width() {
    return width;
  }

  /** Pixels down. */
  public int height() {
    return height;
  }

  /** The density that the file states, exactly, or null if it states none. */
  public @Nullable PixelDensity density() {
    return head.seenDensity();
  }

  /** Whether the pixels carry alpha. */
  public boolean alpha() {
    return head.alpha();
  }

  /** What lies where nothing is drawn. */
  public Ground ground() {
    return look.ground();
  }

  /** Where the ink is inside a frame line drawn round the picture, or null without such a line. */
  public @Nullable InkedBox insideFrame() {
    return insideFrame;
  }

  /** All pixels, decoded on each call: 8-bit sRGB with straight alpha. */
  public BufferedImage image() {
    return decode().toImage(alpha());
  }
}
