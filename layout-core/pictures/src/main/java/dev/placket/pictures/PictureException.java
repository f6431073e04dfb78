package dev.placket.pictures;

/**
 * A picture that cannot be used; its message names the file, the place in it, what was found and
 * what to do.
 */
public final class PictureException extends Exception {
  private static final long serialVersionUID = 1;

  /** With the whole message. */
  public PictureException(String message) {
    super(message);
  }

  /** With the whole message and what led to it. */
  public PictureException(String message, Throwable cause) {
    super(message, cause);
  }
}
