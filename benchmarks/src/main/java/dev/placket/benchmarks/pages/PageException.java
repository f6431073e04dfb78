package dev.placket.benchmarks.pages;

import java.io.Serial;

/** A file of reference sheets that cannot be read; the message names file, place and cure. */
public final class PageException extends RuntimeException {
  @Serial private static final long serialVersionUID = 1;

  /** With the whole message. */
  public PageException(String message) {
    super(message);
  }
}
