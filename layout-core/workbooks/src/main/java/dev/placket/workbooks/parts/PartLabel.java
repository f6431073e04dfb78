package dev.placket.workbooks.parts;

import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.Place;

/**
 * What messages call a part.
 *
 * @param file the workbook
 * @param part its name in the package
 */
public record PartLabel(String file, String part) {
  /** A part of an open workbook. */
  public static PartLabel of(Parts parts, String part) {
    return new PartLabel(parts.file().toString(), part);
  }

  /** A fault of the part as a whole. */
  Fault fault(String found) {
    return Fault.content(file, found).in("part " + part);
  }

  /** A fault at a line of it, from 1. */
  Fault fault(int line, String found) {
    return Fault.content(file, found).at(new Place.PartLine("part " + part, line));
  }
}
