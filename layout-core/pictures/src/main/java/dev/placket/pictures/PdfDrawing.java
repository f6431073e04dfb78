package dev.placket.pictures;

import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.PlanePoint;
import dev.placket.pictures.base.FineDetail;
import dev.placket.pictures.base.Ground;
import dev.placket.pictures.base.OutlineLines;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.base.PlacedImage;
import dev.placket.pictures.base.ViewBox;
import dev.placket.pictures.path.DrawnPath;
import dev.placket.pictures.pdf.OpenPage;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.jspecify.annotations.Nullable;

/**
 * A page of a PDF as a drawing: a drawing unit is a point of its upright crop box, y down. Pages of
 * one file share its document, so only one thread at a time paints them.
 */
public final class PdfDrawing implements Drawing {
  private final OpenPage open;
  private final String digest;

  PdfDrawing(OpenPage open, String digest) {
    this.open = open;
    this.digest = digest;
  }

  @Override
  public String name() {
    return open.name();
  }

  @Override
  public String format() {
    return "PDF";
  }

  /** SHA-256 of the whole file, which other pages share. */
  @Override
  public String digest() {
    return digest;
  }

  @Override
  public List<PictureNote> notes() {
    return open.notes();
  }

  @Override
  public InkedBox inkedBox() {
    return open.measured().ink();
  }

  @Override
  public InkedBox groundedBox() {
    return open.measured().grounded();
  }

  @Override
  public Ground ground() {
    return open.measured().ground();
  }

  @Override
  public ViewBox viewBox() {
    return open.measured().size();
  }

  @Override
  public Length statedWidth() {
    return Length.pt(open.measured().size().width() * open.measured().userUnit());
  }

  @Override
  public Length statedHeight() {
    return Length.pt(open.measured().size().height() * open.measured().userUnit());
  }

  /** None: parts of a page have no names. */
  @Override
  public Map<String, PlanePoint> points() {
    return Map.of();
  }

  /** None, for the same reason. */
  @Override
  public @Nullable DrawnPath path(String id) {
    return null;
  }

  /** Null: the lines of a page stay as they are. */
  @Override
  public @Nullable OutlineLines lines() {
    return null;
  }

  @Override
  public Drawing weighted(double factor, double gap) {
    throw new IllegalStateException("the lines of a page stay as they are");
  }

  @Override
  public FineDetail fineDetail() {
    return open.measured().fine();
  }

  /** The pictures of pixels on the page, in the order of drawing. */
  public List<PlacedImage> images() {
    return open.measured().images();
  }

  /** Of its pictures of pixels the one with the fewest for a drawing unit; null without any. */
  public @Nullable PlacedImage coarsest() {
    return open.measured().images().stream()
        .min(Comparator.comparingDouble(PlacedImage::pixelsPerUnit))
        .orElse(null);
  }

  /**
   * What keeps a document that takes the page over from conforming to PDF/A-2 (ISO 19005-2), as in
   * {@code DeviceCMYK}; null if nothing was found.
   */
  public @Nullable String archiveFault() {
    return open.measured().archiveFault();
  }

  /** The page, to be placed in another document as it is: without annotations and hidden layers. */
  public PDPage page() {
    return open.page();
  }

  /** The document that its objects belong to; pages of one file have the same. */
  public PDDocument document() {
    return open.document();
  }

  @Override
  public void paint(Graphics2D g) {
    Graphics2D own = (Graphics2D) g.create();
    try {
      ViewBox v = viewBox();
      own.clip(new Rectangle2D.Double(v.x(), v.y(), v.width(), v.height()));
      open.paint(own);
    } finally {
      own.dispose();
    }
  }
}
