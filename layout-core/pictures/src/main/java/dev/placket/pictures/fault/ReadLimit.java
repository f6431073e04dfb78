package dev.placket.pictures.fault;

import java.util.Locale;

/** A limit for reading one picture, by its name. */
public enum ReadLimit implements Setting {
  /** Pixels of a raster. */
  PIXELS,
  /** Bytes of a file. */
  BYTES,
  /** Bytes of memory. */
  MEMORY,
  /** Elements of a drawing. */
  ELEMENTS,
  /** Elements inside one another. */
  DEPTH,
  /** Elements once each {@code use} stands for what it points to. */
  USES,
  /** Characters of path data, lists and text. */
  CHARACTERS,
  /** Dashes and markers of lines. */
  DASHES,
  /** Steps of drawing. */
  STEPS;

  @Override
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }
}
