package dev.placket.pictures.base;

/** The background of a raster. */
public enum Ground {
  /** None: the page shows through. */
  TRANSPARENT("transparent"),
  /** White, or visually the same. */
  OPAQUE_WHITE("opaque white"),
  /** A colour, or a photograph that fills its frame. */
  OPAQUE_OTHER("opaque other");

  private final String words;

  Ground(String words) {
    this.words = words;
  }

  /** The background in words, for a report. */
  public String words() {
    return words;
  }
}
