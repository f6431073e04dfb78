package dev.placket.pictures.pdf;

import org.jspecify.annotations.Nullable;

/**
 * A page of a PDF by its names.
 *
 * @param number from 1
 * @param label its page label (ISO 32000-1, 12.4.2), where that says more than its number
 * @param bookmark the title of the first bookmark that leads to it
 */
public record PdfPart(int number, @Nullable String label, @Nullable String bookmark) {
  /** Its label, else its bookmark, else null. */
  public @Nullable String title() {
    return label != null ? label : bookmark;
  }
}
