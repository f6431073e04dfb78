package dev.placket.pictures.pdf;

import java.io.IOException;

/** A typeface that a page uses and its file does not bring along. */
final class MissingTypeface extends IOException {
  private static final long serialVersionUID = 1;

  private final String typeface;

  MissingTypeface(String typeface) {
    super("the typeface " + typeface + " is not embedded");
    this.typeface = typeface;
  }

  String typeface() {
    return typeface;
  }
}
