package dev.placket.pictures.base;

import org.jspecify.annotations.Nullable;

/**
 * One of the drawings that a file holds.
 *
 * @param kind what it is to the file
 * @param key what stands behind the number sign in {@code style.pdf#3}: the number of a page, from
 *     1, or the identifier of an element; empty where the file is one drawing
 * @param title what the file calls it, such as a page label or a bookmark; null if nothing telling
 */
public record PicturePart(Kind kind, String key, @Nullable String title) {
  /** What a part is to its file. */
  public enum Kind {
    /** All of a file that is one drawing. */
    WHOLE,
    /** A page of a PDF. */
    PAGE,
    /** A view of an SVG. */
    VIEW,
    /** An {@code svg} element inside an SVG, with a place of its own. */
    DRAWING,
    /** A group at the top of an SVG, which may be a drawing of its own or a part of one. */
    GROUP
  }

  /** All of a file that is one drawing. */
  public static final PicturePart WHOLE = new PicturePart(Kind.WHOLE, "", null);

  /** Whether it is all of its file. */
  public boolean isWhole() {
    return key.isEmpty();
  }

  /** What it is called: its title, else its key. */
  public String called() {
    return title == null ? key : title;
  }

  /** Whether a name means this part: its key, or its title in capitals or not. */
  public boolean isCalled(String name) {
    return key.equals(name) || (title != null && title.equalsIgnoreCase(name.strip()));
  }
}
