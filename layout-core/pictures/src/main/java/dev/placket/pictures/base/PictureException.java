package dev.placket.pictures.base;

import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.ReadLimit;
import dev.placket.pictures.fault.Setting;
import java.io.IOException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A picture that cannot be used, and why as a value. */
public final class PictureException extends Exception {
  private static final long serialVersionUID = 1;

  private final transient Fault fault;

  /** For a fault, whose message becomes that of the exception. */
  public PictureException(Fault fault) {
    this(fault, null);
  }

  /** For a fault, with what led to it. */
  public PictureException(Fault fault, @Nullable Throwable cause) {
    super(fault.message(), cause);
    this.fault = fault;
  }

  /** The refusal of a picture that asks for more than a limit; what may be done instead first. */
  public static PictureException over(ReadLimit limit, Fault fault) {
    return new PictureException(fault.remedy("raise the limit", limit));
  }

  /** The refusal of a picture whose bytes cannot be had, by the name of its source. */
  public static PictureException cannotOpen(String name, IOException e) {
    return new PictureException(
        Fault.unreadable(name, "cannot be opened (" + e.getMessage() + ")")
            .remedy("check that it is there and may be read"),
        e);
  }

  /** The kind of fault, the place in the file, what was found and what to do. */
  public Fault fault() {
    return fault;
  }

  /** The limit that the picture exceeds, if it exceeds one. */
  public Optional<ReadLimit> limit() {
    for (Setting setting : fault.remedy().settings()) {
      if (setting instanceof ReadLimit limit) {
        return Optional.of(limit);
      }
    }
    return Optional.empty();
  }
}
