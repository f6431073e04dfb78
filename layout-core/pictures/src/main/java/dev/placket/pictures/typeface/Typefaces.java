package dev.placket.pictures.typeface;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;

/**
 * The typefaces in which a drawing's own text is set: those that are given, each under the family
 * name that it states, and Liberation Sans, which comes along, where none of them is asked for. No
 * font of the machine is used, so that a drawing looks the same on any.
 */
public final class Typefaces {
  /** Liberation Sans for all text. */
  public static final Typefaces SHIPPED = new Typefaces(List.of());

  private static final String FILE = "LiberationSans-Regular.ttf";

  private final List<GivenTypeface> given;

  private Typefaces(List<GivenTypeface> given) {
    this.given = List.copyOf(given);
  }

  /**
   * Reads typefaces; of two of one family the first is used.
   *
   * @param files TrueType, one typeface each
   * @throws PictureException naming the file, if one cannot be read or is no typeface
   */
  public static Typefaces of(List<PictureSource> files) throws PictureException {
    return SHIPPED.with(files);
  }

  /**
   * These and, after them, those of files.
   *
   * @throws PictureException if a file cannot be used; its message names the file and the fault
   */
  public Typefaces with(List<PictureSource> files) throws PictureException {
    List<GivenTypeface> all = new ArrayList<>(given);
    for (PictureSource file : files) {
      try (InputStream in = file.open()) {
        all.add(GivenTypeface.of(file.name(), in.readAllBytes()));
      } catch (IOException e) {
        throw PictureException.cannotOpen(file.name(), e);
      }
    }
    return new Typefaces(all);
  }

  /** The family names of the typefaces that are given. */
  public List<String> families() {
    return given.stream().map(GivenTypeface::family).toList();
  }

  /** The typefaces that are given, for the setting of text. */
  public List<GivenTypeface> given() {
    return given;
  }

  /** Read anew by each drawing with text. */
  public static GivenTypeface shipped() {
    try (InputStream in = Typefaces.class.getResourceAsStream(FILE)) {
      if (in == null) {
        throw new IllegalStateException(FILE + " is missing from the library");
      }
      return GivenTypeface.of(FILE, in.readAllBytes());
    } catch (IOException | PictureException e) {
      throw new IllegalStateException(FILE + ": cannot be read", e);
    }
  }
}
