package dev.placket.pictures.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.base.Ground;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.base.PlacedImage;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.base.ViewBox;
import dev.placket.pictures.fault.ReadLimit;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDPageLabelRange;
import org.apache.pdfbox.pdmodel.common.PDPageLabels;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionJavaScript;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationSquare;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationSquareCircle;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Pages of PDFs as drawings; all expected values are reckoned by hand from the operators. */
class PdfFileTest {
  /** No typeface of the machine is looked for. */
  @BeforeAll
  static void noTypefacesOfTheMachine() {
    FontMappers.set(
        new FontMapper() {
          @Override
          public FontMapping<TrueTypeFont> getTrueTypeFont(String name, PDFontDescriptor how) {
            throw new AssertionError("asks the machine for " + name);
          }

          @Override
          public FontMapping<FontBoxFont> getFontBoxFont(String name, PDFontDescriptor how) {
            throw new AssertionError("asks the machine for " + name);
          }

          @Override
          public CIDFontMapping getCIDFont(
              String name, PDFontDescriptor how, PDCIDSystemInfo system) {
            throw new AssertionError("asks the machine for " + name);
          }
        });
  }

  /** Within the rounding of 24 bits, in which PDFBox keeps coordinates. */
  private static final double SAME = 1e-4;

  private static final String LINE = "4 w 20 30 m 120 30 l S";

  private static void box(OpenPage drawing, double left, double top, double right, double bottom) {
    InkedBox ink = drawing.measured().ink();
    assertEquals(left, ink.left(), SAME, ink.toString());
    assertEquals(top, ink.top(), SAME, ink.toString());
    assertEquals(right, ink.right(), SAME, ink.toString());
    assertEquals(bottom, ink.bottom(), SAME, ink.toString());
  }

  private static List<String> notes(OpenPage drawing) {
    return drawing.notes().stream().map(PictureNote::text).toList();
  }

  private static String refusal(MadePdf pdf) {
    return String.valueOf(assertThrows(PictureException.class, pdf::only).getMessage());
  }

  @Test
  void inkIsMeasuredFromTheTopOfThePage() throws Exception {
    MadePdf pdf = new MadePdf();
    pdf.page(LINE);
    OpenPage drawing = pdf.only();
    assertEquals(new ViewBox(0, 0, 200, 100), drawing.measured().size());
    box(drawing, 20, 68, 120, 72);
    assertEquals(Double.valueOf(4), drawing.measured().fine().line());
    assertEquals(Ground.TRANSPARENT, drawing.measured().ground());
    assertEquals(List.of(), drawing.notes());
  }

  @Test
  void cropBoxCutsAndMovesTheOrigin() throws Exception {
    MadePdf pdf = new MadePdf();
    pdf.page(LINE).setCropBox(new PDRectangle(50, 10, 100, 80));
    OpenPage drawing = pdf.only();
    assertEquals(new ViewBox(0, 0, 100, 80), drawing.measured().size());
    box(drawing, 0, 58, 70, 62);
  }

  @Test
  void aPageStandsAsItsRotationSays() throws Exception {
    // A quarter turn clockwise takes a point (x, y from below) to (y, x) from the top left.
    MadePdf quarter = new MadePdf();
    quarter.page(LINE).setRotation(90);
    OpenPage turned = quarter.only();
    assertEquals(new ViewBox(0, 0, 100, 200), turned.measured().size());
    box(turned, 28, 20, 32, 120);
    MadePdf half = new MadePdf();
    half.page(LINE).setRotation(180);
    box(half.only(), 80, 28, 180, 32);
    MadePdf back = new MadePdf();
    back.page(LINE).setRotation(270);
    box(back.only(), 68, 80, 72, 180);
  }

  @Test
  void whatIsMeasuredIsWhatIsPainted() throws Exception {
    for (int degrees : new int[] {0, 90, 180, 270}) {
      MadePdf pdf = new MadePdf();
      pdf.page("0 0 0 rg 20 10 60 30 re f").setRotation(degrees);
      OpenPage drawing = pdf.only();
      ViewBox size = drawing.measured().size();
      BufferedImage all =
          new BufferedImage((int) size.width(), (int) size.height(), BufferedImage.TYPE_INT_ARGB);
      drawing.paint(all.createGraphics());
      InkedBox ink = drawing.measured().ink();
      for (int y = 0; y < all.getHeight(); y++) {
        for (int x = 0; x < all.getWidth(); x++) {
          boolean inside = x >= ink.left() && x < ink.right() && y >= ink.top() && y < ink.bottom();
          assertEquals(inside, all.getRGB(x, y) >>> 24 > 127, degrees + ": " + x + ", " + y);
        }
      }
    }
  }

  @Test
  void clipsAndTransformsCount() throws Exception {
    MadePdf pdf = new MadePdf();
    pdf.page("q 10 10 30 30 re W n 2 0 0 2 0 0 cm 0 0 50 50 re f Q");
    box(pdf.only(), 10, 60, 40, 90);
  }

  @Test
  void aSheetBehindIsBackgroundAndNotInk() throws Exception {
    MadePdf white = new MadePdf();
    white.page("1 1 1 rg 0 0 200 100 re f 0 0 0 rg 20 20 40 40 re f");
    OpenPage drawing = white.only();
    box(drawing, 20, 40, 60, 80);
    assertEquals(Ground.OPAQUE_WHITE, drawing.measured().ground());
  }

  @Test
  void labelsAndBookmarksNamePages() throws Exception {
    MadePdf pdf = new MadePdf();
    PDPage first = pdf.page(LINE);
    pdf.page(LINE);
    PDPage third = pdf.page(LINE);
    PDPageLabels labels = new PDPageLabels(pdf.document);
    PDPageLabelRange named = new PDPageLabelRange();
    named.setPrefix("coat front");
    labels.setLabelItem(0, named);
    PDPageLabelRange counted = new PDPageLabelRange();
    counted.setStyle(PDPageLabelRange.STYLE_DECIMAL);
    labels.setLabelItem(1, counted);
    pdf.document.getDocumentCatalog().setPageLabels(labels);
    PDDocumentOutline outline = new PDDocumentOutline();
    outline.addLast(bookmark("Cover", first));
    outline.addLast(bookmark("Collar detail", third));
    pdf.document.getDocumentCatalog().setDocumentOutline(outline);
    assertEquals(
        List.of(
            new PdfPart(1, "coat front", "Cover"),
            new PdfPart(2, null, null),
            new PdfPart(3, null, "Collar detail")),
        pdf.open().parts());
  }

  private static PDOutlineItem bookmark(String title, PDPage page) {
    PDOutlineItem item = new PDOutlineItem();
    item.setTitle(title);
    PDPageFitDestination to = new PDPageFitDestination();
    to.setPage(page);
    item.setDestination(to);
    return item;
  }

  @Test
  void hiddenLayersAreLeftOutAndCanBeChosen() throws Exception {
    byte[] bytes = layered().bytes();
    PdfFile file = PdfFile.open("style.pdf", bytes, ReadLimits.DEFAULT);
    assertEquals(List.of("Lines", "Notes"), file.layers());
    OpenPage usual = file.page(1, Set.of());
    box(usual, 10, 50, 60, 90);
    assertEquals(List.of("has hidden layers, which are left out: Notes"), notes(usual));
    box(file.page(1, Set.of("Notes")), 10, 10, 140, 90);
    box(file.page(1, Set.of("Lines", "Notes")), 10, 10, 140, 90);
    OpenPage none = file.page(1, Set.of("Other"));
    box(none, 10, 80, 20, 90);
  }

  /**
   * A square of no layer, one of a layer that is shown, and one that is hidden, with text state.
   */
  private static MadePdf layered() throws IOException {
    MadePdf pdf = new MadePdf();
    PDPage page =
        pdf.page(
            "10 10 10 10 re f /OC /L BDC 40 10 20 40 re f EMC"
                + " /OC /N BDC q 100 50 40 40 re f Q /Form Do EMC");
    COSStream form = pdf.form(page, "Form", "0 0 200 100 re f");
    COSDictionary lines = group("Lines");
    COSDictionary hidden = group("Notes");
    form.setItem(COSName.OC, hidden);
    form.setItem(COSName.BBOX, new PDRectangle(100, 50, 40, 40));
    MadePdf.put(page.getResources().getCOSObject(), COSName.PROPERTIES, "L", lines);
    MadePdf.put(page.getResources().getCOSObject(), COSName.PROPERTIES, "N", hidden);
    COSArray all = new COSArray(List.of(lines, hidden));
    COSDictionary usual = new COSDictionary();
    usual.setItem(COSName.OFF, new COSArray(List.of(hidden)));
    COSDictionary properties = new COSDictionary();
    properties.setItem(COSName.OCGS, all);
    properties.setItem(COSName.D, usual);
    pdf.document.getDocumentCatalog().getCOSObject().setItem(COSName.OCPROPERTIES, properties);
    return pdf;
  }

  private static COSDictionary group(String name) {
    COSDictionary group = new COSDictionary();
    group.setItem(COSName.TYPE, COSName.OCG);
    group.setString(COSName.NAME, name);
    return group;
  }

  @Test
  void aPlacedPageIsTiedToNothing() throws Exception {
    MadePdf pdf = layered();
    PDPage page = pdf.document.getPage(0);
    page.getResources().getCOSObject().getCOSDictionary(COSName.XOBJECT);
    COSStream tied = pdf.form(page, "Tied", "/P <</MCID 0>> BDC 10 10 10 10 re f EMC");
    tied.setInt(COSName.STRUCT_PARENTS, 3);
    OpenPage drawing = pdf.only();
    COSDictionary resources = drawing.page().getResources().getCOSObject();
    assertNull(resources.getCOSDictionary(COSName.PROPERTIES));
    COSDictionary forms = resources.getCOSDictionary(COSName.XOBJECT);
    for (COSName name : forms.keySet()) {
      COSStream form = (COSStream) forms.getDictionaryObject(name);
      assertNull(form.getDictionaryObject(COSName.OC), name.getName());
      assertNull(form.getDictionaryObject(COSName.STRUCT_PARENTS), name.getName());
      assertTrue(!form.toTextString().contains("MCID"), form.toTextString());
    }
  }

  @Test
  void picturesCountAtTheirPlace() throws Exception {
    MadePdf pdf = new MadePdf();
    PDPage page = pdf.page("q 0 50 -30 0 100 20 cm /Im Do Q");
    BufferedImage image = new BufferedImage(100, 90, BufferedImage.TYPE_INT_RGB);
    PDImageXObject object = LosslessFactory.createFromImage(pdf.document, image);
    MadePdf.put(page.getResources().getCOSObject(), COSName.XOBJECT, "Im", object.getCOSObject());
    OpenPage drawing = pdf.only();
    // Turned by a quarter: 50 points wide for 100 pixels, 30 high for 90.
    assertEquals(List.of(new PlacedImage(100, 90, 50, 30)), drawing.measured().images());
    assertEquals(2, drawing.measured().images().get(0).pixelsPerUnit(), SAME);
    box(drawing, 70, 30, 100, 80);
  }

  @Test
  void lettersAreMeasuredAndNeedTheirTypeface() throws Exception {
    MadePdf pdf = new MadePdf();
    PDPage page = pdf.page("BT /F1 12 Tf 10 10 Td (Coat) Tj ET");
    COSDictionary helvetica = new COSDictionary();
    helvetica.setItem(COSName.TYPE, COSName.FONT);
    helvetica.setItem(COSName.SUBTYPE, COSName.TYPE1);
    helvetica.setItem(COSName.BASE_FONT, COSName.getPDFName("Helvetica"));
    MadePdf.put(page.getResources().getCOSObject(), COSName.FONT, "F1", helvetica);
    assertEquals(
        "style.pdf: uses the typeface Helvetica, which is not embedded; export it with typefaces"
            + " embedded, or export it with text as paths.",
        refusal(pdf));
  }

  @Test
  void commentsFieldsScriptsAndAttachmentsAreLeftOutWithANote() throws Exception {
    MadePdf pdf = new MadePdf();
    PDPage page = pdf.page(LINE);
    PDAnnotationSquareCircle comment = new PDAnnotationSquare();
    comment.setRectangle(new PDRectangle(0, 0, 200, 100));
    page.setAnnotations(List.of(comment));
    PDDocumentCatalog catalog = pdf.document.getDocumentCatalog();
    catalog.setOpenAction(new PDActionJavaScript("app.alert('x')"));
    PDDocumentNameDictionary names = new PDDocumentNameDictionary(catalog);
    names.setEmbeddedFiles(new PDEmbeddedFilesNameTreeNode());
    catalog.setNames(names);
    OpenPage drawing = pdf.only();
    assertEquals(
        List.of(
            "has scripts, which are left out and never run",
            "has attached files, which are left out",
            "the comments and stamps, 1 of them, are left out; flatten those that belong to the"
                + " drawing"),
        notes(drawing));
    assertEquals(1, drawing.notes().stream().filter(PictureNote::changesPicture).count());
    box(drawing, 20, 68, 120, 72);
  }

  @Test
  void encryptedIsRefusedEvenWithoutAPassword() throws Exception {
    for (String user : new String[] {"", "secret"}) {
      MadePdf pdf = new MadePdf();
      pdf.page(LINE);
      pdf.document.protect(new StandardProtectionPolicy("owner", user, new AccessPermission()));
      assertEquals(
          "style.pdf: is an encrypted PDF; export it without a password or restrictions.",
          refusal(pdf));
    }
  }

  @Test
  void aBlankPageIsRefused() throws Exception {
    MadePdf pdf = new MadePdf();
    pdf.page("q Q");
    assertEquals(
        "style.pdf: draws nothing on its page; check its layers and its crop box.", refusal(pdf));
  }

  @Test
  void aPageOfSeveralIsNamedByItsNumber() throws Exception {
    MadePdf pdf = new MadePdf();
    pdf.page(LINE);
    pdf.page("q Q");
    PdfFile file = pdf.open();
    assertEquals("style.pdf#1", file.page(1, Set.of()).name());
    PictureException e = assertThrows(PictureException.class, () -> file.page(2, Set.of()));
    assertTrue(
        String.valueOf(e.getMessage()).startsWith("style.pdf#2: draws nothing"), e.getMessage());
  }

  @Test
  void whatDrawsWithoutEndIsRefused() throws Exception {
    MadePdf loop = new MadePdf();
    PDPage page = loop.page("/A Do");
    COSStream form = loop.form(page, "A", "/A Do 0 0 1 1 re f");
    MadePdf.put(form.getCOSDictionary(COSName.RESOURCES), COSName.XOBJECT, "A", form);
    assertEquals(
        "style.pdf: the page cannot be drawn (its forms lie more than 48 deep inside one another);"
            + " export it again.",
        refusal(loop));
    MadePdf many = doubling(24);
    PictureException e = assertThrows(PictureException.class, many::only);
    assertEquals(ReadLimit.STEPS, e.limit().orElseThrow());
    MadePdf notDrawn = doubling(24);
    notDrawn.document.getPage(0).getCOSObject().removeItem(COSName.CONTENTS);
    assertThrows(PictureException.class, notDrawn::only);
  }

  /** Forms each of which draws the next twice. */
  private static MadePdf doubling(int depth) throws IOException {
    MadePdf pdf = new MadePdf();
    PDPage page = pdf.page("/F0 Do");
    COSStream[] forms = new COSStream[depth];
    for (int i = 0; i < depth; i++) {
      String next = i + 1 < depth ? "/N Do /N Do" : "0 0 1 1 re f";
      forms[i] = pdf.form(page, "F" + i, next);
    }
    for (int i = 0; i + 1 < depth; i++) {
      MadePdf.put(forms[i].getCOSDictionary(COSName.RESOURCES), COSName.XOBJECT, "N", forms[i + 1]);
    }
    return pdf;
  }

  @Test
  void whatUnpacksWithoutEndIsRefused() throws Exception {
    MadePdf pdf = new MadePdf();
    PDPage page = pdf.page("/A Do");
    COSStream bomb = pdf.form(page, "A", "0 0 1 1 re f");
    try (var out = bomb.createOutputStream(COSName.FLATE_DECODE)) {
      byte[] blanks = new byte[1 << 20];
      java.util.Arrays.fill(blanks, (byte) ' ');
      for (int i = 0; i < 200; i++) {
        out.write(blanks);
      }
    }
    PictureException e = assertThrows(PictureException.class, pdf::only);
    assertEquals(ReadLimit.MEMORY, e.limit().orElseThrow());
    MadePdf large = new MadePdf();
    PDPage other = large.page("/A Do");
    COSStream picture = large.form(other, "A", "");
    picture.setItem(COSName.SUBTYPE, COSName.IMAGE);
    picture.setInt(COSName.WIDTH, 30_000);
    picture.setInt(COSName.HEIGHT, 30_000);
    PictureException pixels = assertThrows(PictureException.class, large::only);
    assertEquals(ReadLimit.PIXELS, pixels.limit().orElseThrow());
  }

  @Test
  void hugeAndEmptyBoxesAreRefused() throws Exception {
    MadePdf none = new MadePdf();
    PDPage page = none.page(LINE);
    COSArray box = new COSArray(List.of(number(0), number(0), number(0), number(0)));
    page.getCOSObject().setItem(COSName.MEDIA_BOX, box);
    page.getCOSObject().setItem(COSName.CROP_BOX, box);
    assertTrue(refusal(none).startsWith("style.pdf: "), "no size");
    MadePdf far = new MadePdf();
    far.page("1e30 0 0 1e30 0 0 cm 0 0 1 1 re f", new PDRectangle(1e30f, 1e30f));
    assertTrue(refusal(far).startsWith("style.pdf: "), "huge");
  }

  private static COSFloat number(float value) {
    return new COSFloat(value);
  }

  @Test
  void unknownOperatorsAreRefusedRatherThanSkipped() throws Exception {
    MadePdf pdf = new MadePdf();
    pdf.page(LINE + " 3 4 frob");
    assertEquals(
        "style.pdf: the page cannot be drawn (the unknown operator 'frob'); export it again.",
        refusal(pdf));
  }

  @Test
  void aCutFileIsRefusedOrSaidToBeDamaged() throws Exception {
    MadePdf pdf = new MadePdf();
    PDPage page = pdf.page(LINE + " /A Do");
    pdf.form(page, "A", "0 0 9 9 re f 150 60 30 30 re f ".repeat(40));
    byte[] bytes = pdf.bytes();
    for (int at = 9; at < bytes.length - 8; at += 3) {
      byte[] cut = java.util.Arrays.copyOf(bytes, at);
      try {
        OpenPage read = PdfFile.open("style.pdf", cut, ReadLimits.DEFAULT).page(1, Set.of());
        assertTrue(read.notes().stream().anyMatch(PictureNote::changesPicture), "cut at " + at);
      } catch (PictureException e) {
        assertTrue(String.valueOf(e.getMessage()).startsWith("style.pdf"), e.getMessage());
      }
    }
  }
}
