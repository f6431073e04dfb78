package dev.placket.packs.page;

import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.PdfDrawing;
import dev.placket.pictures.base.StoredJpeg;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** What is drawn for a flat: paths, or pixels. */
public sealed interface Art permits Art.Paths, Art.PdfPart, Art.Pixels {
  /**
   * A drawing made of paths.
   *
   * @param painter draws in drawing units
   * @param ink where its ink lies, in drawing units
   * @param scale points on the sheet per drawing unit
   */
  record Paths(Consumer<Graphics2D> painter, InkedBox ink, double scale) implements Art {}

  /**
   * A page of a PDF, placed as it is.
   *
   * @param drawing the page
   * @param ink where its ink lies, in drawing units
   * @param scale points on the sheet per drawing unit
   */
  record PdfPart(PdfDrawing drawing, InkedBox ink, double scale) implements Art {}

  /**
   * A picture that fills the inked box.
   *
   * @param image its pixels, with alpha where the ground is clear
   * @param jpeg the same pixels as the JPEG of their file; null without one
   */
  record Pixels(BufferedImage image, @Nullable StoredJpeg jpeg) implements Art {}
}
