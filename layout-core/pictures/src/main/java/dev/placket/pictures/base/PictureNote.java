package dev.placket.pictures.base;

/**
 * One thing that a designer should know about how a picture was read.
 *
 * @param text one clause without the name of the picture and without a full stop, in a designer's
 *     words: "the shading set to multiply is left out; flatten it before export"
 * @param changesPicture whether the picture is drawn other than its file says, so that it may print
 *     wrong: a part is left out or replaced. False for plain information, such as the page that is
 *     read of several
 */
public record PictureNote(String text, boolean changesPicture) {
  /**
   * Checks the text.
   *
   * @throws IllegalArgumentException if it is blank
   */
  public PictureNote {
    if (text.isBlank()) {
      throw new IllegalArgumentException("a note has a text");
    }
  }

  /** A note of what is drawn other than the file says, with what to do in the drawing program. */
  public static PictureNote changed(String text) {
    return new PictureNote(text, true);
  }

  /** A note of what is drawn as the file says. */
  public static PictureNote plain(String text) {
    return new PictureNote(text, false);
  }

  /** Its text alone. */
  @Override
  public String toString() {
    return text;
  }
}
