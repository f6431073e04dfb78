package dev.placket.pictures;

import dev.placket.pictures.fault.Visible;
import org.jspecify.annotations.Nullable;

/**
 * A picture that cannot be used; its message names the file, the place in it, what was found and
 * what to do. The message is one line: signs of names in it that would break the line or steer a
 * terminal are spelled out, see {@link Visible}.
 */
public final class PictureException extends Exception {
  private static final long serialVersionUID = 1;

  private final @Nullable String limit;

  /** With the whole message. */
  public PictureException(String message) {
    this(message, null, null);
  }

  /** With the whole message and what led to it. */
  public PictureException(String message, @Nullable Throwable cause) {
    this(message, cause, null);
  }

  private PictureException(String message, @Nullable Throwable cause, @Nullable String limit) {
    super(Visible.words(message), cause);
    this.limit = limit;
  }

  /**
   * The refusal of a picture that asks for more than a limit, by its name in {@link ReadLimits}.
   */
  static PictureException over(String limit, String message) {
    return new PictureException(message, null, limit);
  }

  /**
   * The name of the limit that the picture exceeds, as {@link ReadLimits#with} takes it; or null.
   */
  public @Nullable String limit() {
    return limit;
  }
}
