package dev.placket.pictures;

/** What a raster has where nothing is drawn. */
public enum Ground {
  /** Nothing: the page shows through. */
  TRANSPARENT("transparent"),
  /** White, or so near it that nobody sees the difference. */
  OPAQUE_WHITE("opaque white"),
  /** A colour, or a photograph that fills its frame. */
  OPAQUE_OTHER("opaque other");

  private final String words;

  Ground(String words) {
    this.words = words;
  }

  /** The ground in words, as a report says it. */
  public String words() {
    return words;
  }
}
