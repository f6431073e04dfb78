package dev.placket.pictures.pdf;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.base.ViewBox;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.ReadLimit;
import dev.placket.pictures.shape.InkBoxes;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.io.IOUtils;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdfparser.PDFParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.jspecify.annotations.Nullable;

/** A PDF whose pages are drawings (ISO 32000-1). */
public final class PdfFile {
  /** The most pages of a file; a style has few flats. */
  private static final int MOST_PAGES = 500;

  private final String name;
  private final ReadLimits limits;
  private final PDDocument document;
  private final boolean repaired;
  private final OptionalContent layers;
  private final List<PdfPart> parts;
  private final Map<Set<String>, PlainContent> plain = new HashMap<>();

  private PdfFile(String name, ReadLimits limits, PDDocument document, boolean repaired) {
    this.repaired = repaired;
    this.name = name;
    this.limits = limits;
    this.document = document;
    this.layers = OptionalContent.of(document.getDocumentCatalog().getCOSObject());
    this.parts = PdfNames.of(document);
  }

  /**
   * Opens a PDF.
   *
   * @param name what messages call it
   * @throws PictureException if it is encrypted or damaged, has no page or too many, or unpacks to
   *     more than the limits
   */
  public static PdfFile open(String name, byte[] bytes, ReadLimits limits) throws PictureException {
    try {
      boolean repaired = false;
      PDDocument document;
      try {
        document = parse(bytes, false);
      } catch (InvalidPasswordException e) {
        throw e;
      } catch (IOException e) {
        document = parse(bytes, true);
        repaired = true;
      }
      if (document.isEncrypted()) {
        throw encrypted(name, null);
      }
      int pages = document.getNumberOfPages();
      if (pages < 1 || pages > MOST_PAGES) {
        throw new PictureException(
            Fault.content(name, "has " + pages + " pages")
                .remedy("export a PDF of 1 to " + MOST_PAGES));
      }
      new PdfGuard(name, limits).check(document.getDocument());
      checkPages(name, document);
      return new PdfFile(name, limits, document, repaired);
    } catch (InvalidPasswordException e) {
      throw encrypted(name, e);
    } catch (IOException | RuntimeException | StackOverflowError e) {
      throw new PictureException(
          Fault.content(name, "is a damaged PDF (" + reason(e) + ")").remedy("export it again"), e);
    } catch (OutOfMemoryError e) {
      throw ReadLimits.outOfMemory(name, e);
    }
  }

  /** A count that its tree of pages does not bear out would lead to other pages, or to none. */
  private static void checkPages(String name, PDDocument document) throws PictureException {
    int there = 0;
    Iterator<PDPage> pages = document.getPages().iterator();
    while (pages.hasNext() && there <= MOST_PAGES) {
      pages.next();
      there++;
    }
    int stated = document.getNumberOfPages();
    if (there != stated) {
      throw new PictureException(
          Fault.content(name, "states " + stated + " pages and has " + there)
              .remedy("export it again"));
    }
  }

  private static PDDocument parse(byte[] bytes, boolean lenient) throws IOException {
    return new PDFParser(
            new RandomAccessReadBuffer(bytes),
            "",
            null,
            null,
            IOUtils.createMemoryOnlyStreamCache())
        .parse(lenient);
  }

  private static PictureException encrypted(String name, @Nullable InvalidPasswordException cause) {
    return new PictureException(
        Fault.content(name, "is an encrypted PDF")
            .remedy("export it without a password or restrictions"),
        cause);
  }

  /** Its pages by their names, in order. */
  public List<PdfPart> parts() {
    return parts;
  }

  /** The names of its layers, in the order of the file; often none. */
  public List<String> layers() {
    return layers.names();
  }

  /**
   * A page, measured.
   *
   * @param number from 1
   * @param shown the layers to show; none for those that the file shows by default
   * @throws PictureException if the page is blank, cannot be drawn or asks for more than the limits
   * @throws IndexOutOfBoundsException if there is no such page
   */
  public OpenPage page(int number, Set<String> shown) throws PictureException {
    String called = parts.size() == 1 ? name : name + "#" + number;
    try {
      return read(called, number - 1, shown);
    } catch (StepCount.TooManySteps e) {
      throw PictureException.over(
          ReadLimit.STEPS,
          Fault.limit(called, "takes more than " + limits.steps() + " steps to draw, the limit")
              .remedy("export it with fewer paths and patterns"));
    } catch (PdfGuard.UnreadPicture e) {
      throw new PictureException(
          Fault.content(called, "has a picture in " + e.getMessage() + ", which is not read")
              .remedy("export it with pictures as PNG or JPEG"),
          e);
    } catch (MissingTypeface e) {
      throw new PictureException(
          Fault.content(called, "uses the typeface " + e.typeface() + ", which is not embedded")
              .remedy("export it with typefaces embedded")
              .remedy("export it with text as paths"),
          e);
    } catch (IOException | RuntimeException | StackOverflowError e) {
      throw new PictureException(
          Fault.content(called, "the page cannot be drawn (" + reason(e) + ")")
              .remedy("export it again"),
          e);
    } catch (OutOfMemoryError e) {
      throw ReadLimits.outOfMemory(called, e);
    }
  }

  private OpenPage read(String called, int index, Set<String> shown)
      throws IOException, PictureException {
    PDPage original = document.getPage(index);
    OptionalContent visible = shown.isEmpty() ? layers : layers.showing(shown);
    PDPage page = plain.computeIfAbsent(shown, s -> new PlainContent(visible)).of(original);
    PDRectangle box = page.getCropBox();
    boolean upright = page.getRotation() % 180 == 0;
    double width = upright ? box.getWidth() : box.getHeight();
    double height = upright ? box.getHeight() : box.getWidth();
    if (!(width > 0 && height > 0)) {
      throw new PictureException(
          Fault.content(called, "the page has no size").remedy("export it again"));
    }
    PageMeasure measure =
        new PageMeasure(
            page,
            toUnits(page),
            new Rectangle2D.Double(0, 0, width, height),
            new StepCount(limits.steps()));
    measure.run();
    Rectangle2D ink = measure.ink().box();
    if (ink == null) {
      throw new PictureException(
          Fault.content(called, "draws nothing on its page")
              .remedy("check its layers and its crop box"));
    }
    OpenPage.Measured measured =
        new OpenPage.Measured(
            new ViewBox(0, 0, width, height),
            userUnit(original),
            InkBoxes.inked(ink),
            InkBoxes.inked(Objects.requireNonNull(measure.ink().withGround())),
            measure.ink().ground(),
            measure.fine(),
            measure.images(),
            measure.archiveFault());
    OpenPage open =
        new OpenPage(
            called, document, index, page, limits.steps(), measured, notes(original, visible));
    tryOut(open);
    return open;
  }

  /** What cannot be painted is refused now, not when the sheets are written. */
  private static void tryOut(OpenPage open) {
    BufferedImage image = new BufferedImage(TRIAL, TRIAL, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    try {
      ViewBox size = open.measured().size();
      g.scale(TRIAL / size.width(), TRIAL / size.height());
      open.paint(g);
    } finally {
      g.dispose();
    }
  }

  /** Pixels across of a trial: enough to come past every operator. */
  private static final int TRIAL = 16;

  private List<PictureNote> notes(PDPage page, OptionalContent visible) {
    COSDictionary catalog = document.getDocumentCatalog().getCOSObject();
    List<PictureNote> notes = new ArrayList<>(PdfExtras.ofDocument(catalog));
    if (repaired) {
      notes.add(
          PictureNote.changed(
              "the file is damaged and was read as far as it can be, so parts may be missing;"
                  + " export it again"));
    }
    notes.addAll(PdfExtras.ofPage(page.getCOSObject()));
    Set<String> hidden = visible.hiddenNames();
    if (!hidden.isEmpty()) {
      notes.add(
          PictureNote.plain("has hidden layers, which are left out: " + String.join(", ", hidden)));
    }
    return notes;
  }

  private static double userUnit(PDPage page) {
    float unit = page.getCOSObject().getFloat(COSName.getPDFName("UserUnit"), 1);
    return unit > 0 && Float.isFinite(unit) ? unit : 1;
  }

  /** From the space of a page to its upright crop box, y down. */
  static AffineTransform toUnits(PDPage page) {
    PDRectangle box = page.getCropBox();
    AffineTransform at = new AffineTransform();
    switch (page.getRotation()) {
      case 90 -> at.translate(box.getHeight(), 0);
      case 180 -> at.translate(box.getWidth(), box.getHeight());
      case 270 -> at.translate(0, box.getWidth());
      default -> {}
    }
    at.rotate(Math.toRadians(page.getRotation()));
    at.translate(0, box.getHeight());
    at.scale(1, -1);
    at.translate(-box.getLowerLeftX(), -box.getLowerLeftY());
    return at;
  }

  private static String reason(Throwable e) {
    String message = e.getMessage();
    return message == null || message.isBlank()
        ? "its content is faulty"
        : message.strip().split("\\R")[0];
  }
}
