package dev.placket.pictures.pdf;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.rendering.PageDrawer;
import org.apache.pdfbox.rendering.PageDrawerParameters;

/**
 * Paints a page of a PDF onto a graphics, without its annotations; faults are thrown, not logged.
 */
final class PagePainter extends PDFRenderer {
  private final int index;
  private final PDPage page;
  private final long steps;
  private final Graphics2D target;

  private PagePainter(PDDocument document, int index, PDPage page, long steps, Graphics2D target) {
    super(document);
    this.index = index;
    this.page = page;
    this.steps = steps;
    this.target = target;
  }

  /**
   * Paints a page in the space of its upright box, y down, a unit a point.
   *
   * @param index where a page of the document stands, for what the renderer asks of it
   * @param page what is painted in its place
   * @param steps the most operators
   */
  static void paint(PDDocument document, int index, PDPage page, long steps, Graphics2D target)
      throws IOException {
    Graphics2D own = (Graphics2D) target.create();
    try {
      turn(own, page);
      new PagePainter(document, index, page, steps, own).start();
    } finally {
      own.dispose();
    }
  }

  private static void turn(Graphics2D g, PDPage page) {
    PDRectangle box = page.getCropBox();
    int degrees = page.getRotation();
    switch (degrees) {
      case 90 -> g.translate(box.getHeight(), 0);
      case 180 -> g.translate(box.getWidth(), box.getHeight());
      case 270 -> g.translate(0, box.getWidth());
      default -> {}
    }
    g.rotate(Math.toRadians(degrees));
  }

  /** The renderer clears what it draws on, so it is given something else. */
  private void start() throws IOException {
    Graphics2D aside = new BufferedImage(1, 1, BufferedImage.TYPE_INT_ARGB).createGraphics();
    try {
      renderPageToGraphics(index, aside);
    } finally {
      aside.dispose();
    }
  }

  @Override
  protected PageDrawer createPageDrawer(PageDrawerParameters parameters) throws IOException {
    return new Drawer(parameters);
  }

  private final class Drawer extends PageDrawer {
    private final StepCount count = new StepCount(steps);
    private final EmbeddedFonts fonts = new EmbeddedFonts(this);

    Drawer(PageDrawerParameters parameters) throws IOException {
      super(parameters);
      setAnnotationFilter(annotation -> false);
    }

    @Override
    public void drawPage(Graphics2D g, PDRectangle box) throws IOException {
      super.drawPage(target, page.getCropBox());
    }

    @Override
    public void processPage(PDPage of) throws IOException {
      super.processPage(page);
    }

    @Override
    protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
      count.next(operator.getName());
      if (!fonts.passesOver(operator.getName(), operands)) {
        super.processOperator(operator, operands);
      }
    }

    @Override
    protected void operatorException(Operator operator, List<COSBase> operands, IOException e)
        throws IOException {
      throw e;
    }
  }
}
