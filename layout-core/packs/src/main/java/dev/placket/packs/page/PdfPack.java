package dev.placket.packs.page;

import dev.placket.layout.sheet.PaperSize;
import dev.placket.packs.text.Xml;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * Makes the bytes of a pack: the same pages give the same bytes, since nothing in the file comes
 * from a clock.
 */
public final class PdfPack {
  private static final double PREVIEW_PER_INCH = 110;

  /** PDF/A-2a (ISO 19005-2) and PDF/UA-1 (ISO 14289-1), with the schema of the latter. */
  private static final String CLAIMS =
      """
      <rdf:Description rdf:about="" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/">
      <pdfaid:part>2</pdfaid:part><pdfaid:conformance>A</pdfaid:conformance>
      </rdf:Description>
      <rdf:Description rdf:about="" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
      <pdfuaid:part>1</pdfuaid:part>
      </rdf:Description>
      <rdf:Description rdf:about=""
       xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
       xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#"
       xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
      <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
      <pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>
      <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
      <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
      <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
      <pdfaProperty:name>part</pdfaProperty:name>
      <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
      <pdfaProperty:category>internal</pdfaProperty:category>
      <pdfaProperty:description>The part of ISO 14289</pdfaProperty:description>
      </rdf:li></rdf:Seq></pdfaSchema:property>
      </rdf:li></rdf:Bag></pdfaExtension:schemas>
      </rdf:Description>
      """;

  private final String title;
  private final List<String> languages;

  /**
   * A pack with its title.
   *
   * @param title what a reader shows as the document's name
   * @param languages tags of BCP 47 by the numbers that text states, the leading one first
   */
  public PdfPack(String title, List<String> languages) {
    this.title = title;
    this.languages = List.copyOf(languages);
  }

  /**
   * A page with what is drawn on it.
   *
   * @param page the ruled sheet with its text
   * @param flats its flats; none leaves it blank
   * @param marks the marks of its revision
   */
  public record Filled(Page page, List<Inked> flats, List<RevisionMark> marks) {
    /** Copies the lists. */
    public Filled {
      flats = List.copyOf(flats);
      marks = List.copyOf(marks);
    }

    /** Without marks. */
    public Filled(Page page, List<Inked> flats) {
      this(page, flats, List.of());
    }
  }

  /** The PDF of one page with its flats. */
  public byte[] pdf(Page page, List<Inked> flats) throws IOException {
    return pdf(List.of(new Filled(page, flats)));
  }

  /** The PDF of all pages in their order. */
  public byte[] pdf(List<Filled> pages) throws IOException {
    boolean claims =
        pages.stream()
            .flatMap(p -> Stream.concat(p.page().pictures().stream(), p.flats().stream()))
            .allMatch(PdfPack::conforms);
    try (PDDocument document = new PDDocument()) {
      describe(document, claims);
      Tags tags = new Tags(document);
      Fonts fonts = new Fonts(document);
      PlacedPages placed = new PlacedPages(document);
      Spans spans = new Spans(languages);
      for (Filled each : pages) {
        new PdfPage(document, each.page(), fonts, tags, placed, spans)
            .draw(each.page(), each.flats(), each.marks());
      }
      if (pages.size() > 1) {
        bookmarks(document, pages);
      }
      document.setDocumentId(ContentId.of(document, title));
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      document.save(bytes);
      return bytes.toByteArray();
    }
  }

  /**
   * The page as a PNG for the screen, 110 pixels to the inch.
   *
   * @param most most pixels; a page that would have more has fewer to the inch
   */
  public static byte[] preview(Filled page, long most) {
    return PagePicture.png(page, PREVIEW_PER_INCH, most);
  }

  /** The pixels that the preview of a sheet of this paper has, where it has at most so many. */
  public static long previewPixels(PaperSize paper, long most) {
    return PagePicture.pixels(paper, PREVIEW_PER_INCH, most);
  }

  /**
   * Colours are those of sRGB. Written by hand: the library passes a profile through the JDK, of
   * which each version returns other bytes.
   */
  private static PDOutputIntent screen(PDDocument document) throws IOException {
    COSStream profile = document.getDocument().createCOSStream();
    profile.setInt(COSName.N, 3);
    try (OutputStream out = profile.createOutputStream(COSName.FLATE_DECODE)) {
      out.write(SrgbProfile.bytes());
    }
    COSDictionary screen = new COSDictionary();
    screen.setItem(COSName.TYPE, COSName.OUTPUT_INTENT);
    screen.setItem(COSName.S, COSName.GTS_PDFA1);
    screen.setItem(COSName.DEST_OUTPUT_PROFILE, profile);
    screen.setString(COSName.INFO, SrgbProfile.NAME);
    screen.setString(COSName.OUTPUT_CONDITION, SrgbProfile.NAME);
    screen.setString(COSName.OUTPUT_CONDITION_IDENTIFIER, SrgbProfile.NAME);
    screen.setString(COSName.REGISTRY_NAME, "http://www.color.org");
    return new PDOutputIntent(screen);
  }

  /** One for each sheet, by its name. */
  private static void bookmarks(PDDocument document, List<Filled> pages) {
    PDDocumentOutline outline = new PDDocumentOutline();
    for (int i = 0; i < pages.size(); i++) {
      PDPageFitDestination to = new PDPageFitDestination();
      to.setPage(document.getPage(i));
      PDOutlineItem item = new PDOutlineItem();
      item.setTitle(pages.get(i).page().sheet().name());
      item.setDestination(to);
      outline.addLast(item);
    }
    document.getDocumentCatalog().setDocumentOutline(outline);
  }

  private static boolean conforms(Inked flat) {
    return !(flat.art() instanceof Art.PdfPart part) || part.drawing().archiveFault() == null;
  }

  private void describe(PDDocument document, boolean claims) throws IOException {
    document.setVersion(1.7f);
    document.getDocumentInformation().setTitle(title);
    document.getDocumentInformation().setProducer("Placket");
    document.getDocumentCatalog().setLanguage(languages.get(0));
    PDViewerPreferences viewer = new PDViewerPreferences(new COSDictionary());
    viewer.setDisplayDocTitle(true);
    viewer.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
    document.getDocumentCatalog().setViewerPreferences(viewer);
    PDMetadata metadata = new PDMetadata(document);
    metadata.importXMPMetadata(xmp(claims).getBytes(StandardCharsets.UTF_8));
    metadata.getCOSObject().removeItem(COSName.FILTER);
    document.getDocumentCatalog().setMetadata(metadata);
    document.getDocumentCatalog().addOutputIntent(screen(document));
  }

  private String xmp(boolean claims) {
    String safe = Xml.escaped(title);
    return """
        <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
        <x:xmpmeta xmlns:x="adobe:ns:meta/">
        <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
        <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/">
        <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:title>
        <dc:language><rdf:Bag><rdf:li>%s</rdf:li></rdf:Bag></dc:language>
        </rdf:Description>
        %s</rdf:RDF>
        </x:xmpmeta>
        <?xpacket end="r"?>
        """
        .formatted(safe, languages.get(0), claims ? CLAIMS : "");
  }
}
