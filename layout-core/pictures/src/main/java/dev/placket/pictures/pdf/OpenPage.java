package dev.placket.pictures.pdf;

import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.base.FineDetail;
import dev.placket.pictures.base.Ground;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.base.PlacedImage;
import dev.placket.pictures.base.ViewBox;
import java.awt.Graphics2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.jspecify.annotations.Nullable;

/**
 * A page of a PDF, measured, with the document that it belongs to.
 *
 * @param name what messages call it
 * @param document its file; pages of one file have the same
 * @param index where it stands in the file, from 0
 * @param page what is drawn of it: without annotations and hidden layers
 * @param steps the most operators that painting it may take
 * @param measured its size and what is on it
 * @param notes what a designer should know
 */
public record OpenPage(
    String name,
    PDDocument document,
    int index,
    PDPage page,
    long steps,
    Measured measured,
    List<PictureNote> notes) {
  /** Copies the list. */
  public OpenPage {
    notes = List.copyOf(notes);
  }

  /**
   * What was measured of a page.
   *
   * @param size its upright crop box
   * @param userUnit the length of its unit, in points
   * @param ink where its ink lies
   * @param grounded where it lies with its white
   * @param ground what lies behind it
   * @param fine the finest things on it
   * @param images its pictures of pixels, in the order of drawing
   * @param archiveFault what it may not bring into a PDF/A-2; null for nothing
   */
  public record Measured(
      ViewBox size,
      double userUnit,
      InkedBox ink,
      InkedBox grounded,
      Ground ground,
      FineDetail fine,
      List<PlacedImage> images,
      @Nullable String archiveFault) {
    /** Copies the list. */
    public Measured {
      images = List.copyOf(images);
    }
  }

  /** Paints it in the space of its upright crop box, y down; one thread at a time for a file. */
  public void paint(Graphics2D g) {
    synchronized (document) {
      try {
        PagePainter.paint(document, index, page, steps, g);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
