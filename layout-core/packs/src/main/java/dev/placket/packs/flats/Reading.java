package dev.placket.packs.flats;

import dev.placket.layout.flat.Role;
import dev.placket.pictures.Picture;
import dev.placket.pictures.PictureFile;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.typeface.Typefaces;

/**
 * How the pictures of a run are read.
 *
 * @param typefaces for the text of drawings
 * @param limits what a picture may ask for
 */
public record Reading(Typefaces typefaces, ReadLimits limits) {
  /** With the typefaces that come with the program, within the usual limits. */
  public static final Reading DEFAULT = new Reading(Typefaces.SHIPPED, ReadLimits.DEFAULT);

  /** The same limits with other typefaces. */
  public Reading with(Typefaces others) {
    return new Reading(others, limits);
  }

  /**
   * Reads a picture for its role.
   *
   * @throws PictureException as {@link PictureReader#read}
   */
  public Picture picture(PictureSource source, Role role) throws PictureException {
    return role == Role.SWATCH
        ? PictureReader.readSwatch(source, limits, typefaces)
        : PictureReader.read(source, limits, typefaces);
  }

  /**
   * Opens a file of pictures.
   *
   * @throws PictureException as {@link PictureFile#open}
   */
  public PictureFile open(PictureSource source) throws PictureException {
    return PictureFile.open(source, limits, typefaces);
  }
}
