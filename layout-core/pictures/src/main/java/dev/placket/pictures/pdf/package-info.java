/**
 * Pages of PDF files (ISO 32000-1) as drawings, read with PDFBox.
 *
 * <p>{@code PdfFile} opens a file and names its pages. {@code PlainContent} brings a page into a
 * form that can stand in another document: hidden layers removed ({@code OptionalContent}), marked
 * content and ties to the structure of the source left out. {@code PageMeasure} walks the operators
 * of that page once and measures ink, finest line, lettering and stitch gap, and the pictures of
 * pixels. {@code PagePainter} draws it for previews and worksheets; a pack places the page itself.
 *
 * <p>Nothing is drawn wrong without a word: an unknown operator, a damaged or missing typeface and
 * a picture without decoder refuse the page, where PDFBox would skip them or take a typeface of the
 * machine. {@code PdfGuard} unpacks every stream against the limits before use, and each operator
 * is a counted step. What lies over a page, such as comments and form fields, is left out with a
 * note.
 */
@NullMarked
package dev.placket.pictures.pdf;

import org.jspecify.annotations.NullMarked;
