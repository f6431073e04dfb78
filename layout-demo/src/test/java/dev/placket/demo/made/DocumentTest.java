package dev.placket.demo.made;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What the demo's PDF says of itself, by the keys of ISO 32000-1 (named from memory). */
class DocumentTest {
  private MadeSheet made;
  private PDDocument document;

  @BeforeEach
  void open() throws Exception {
    made = MadeSheet.of(MadeSheet.DEMO);
    document = Loader.loadPDF(made.pdf().toFile());
  }

  @AfterEach
  void close() throws Exception {
    document.close();
  }

  @Test
  void itHasTitleAndLanguage() throws Exception {
    PDDocumentCatalog catalog = document.getDocumentCatalog();
    // 14.9.2 natural language, 14.3.3 title, 12.2 DisplayDocTitle.
    assertEquals("en", catalog.getLanguage());
    String title = document.getDocumentInformation().getTitle();
    assertEquals(made.fit().path("pack").path("title").asText(), title);
    assertTrue(title.contains("MG-3107"), title);
    assertTrue(catalog.getViewerPreferences().displayDocTitle());
  }

  @Test
  void itIsPrintedAtFullSize() {
    // 12.2: PrintScaling None, so that a viewer does not shrink the page to the paper by itself.
    assertEquals(
        PDViewerPreferences.PRINT_SCALING.None.toString(),
        document.getDocumentCatalog().getViewerPreferences().getPrintScaling());
  }

  @Test
  void everyFlatIsDescribedInWords() {
    List<PDStructureElement> figures = new ArrayList<>();
    collect(document.getDocumentCatalog().getStructureTreeRoot(), figures);
    List<JsonNode> placements = made.placements();
    assertEquals(placements.size(), figures.size());
    for (int i = 0; i < figures.size(); i++) {
      String words = figures.get(i).getAlternateDescription();
      assertTrue(words.contains(placements.get(i).path("caption").asText()), words);
    }
    assertTrue(document.getDocumentCatalog().getMarkInfo().isMarked());
  }

  @Test
  void itsTypefacesAreEmbedded() throws Exception {
    int fonts = 0;
    PDResources resources = document.getPage(0).getResources();
    for (COSName name : resources.getFontNames()) {
      PDFont font = resources.getFont(name);
      assertTrue(font.isEmbedded(), font.getName());
      fonts++;
    }
    assertEquals(1, fonts, "one type family");
  }

  @Test
  void itsTextCanBeSelected() throws Exception {
    String text = new PDFTextStripper().getText(document);
    for (String words : List.of("Mossgantry", "MG-3107", "wool/cotton twill 420 g/m²", "XS–XXL")) {
      assertTrue(text.contains(words), words);
    }
    made.placements().forEach(p -> assertTrue(text.contains(p.path("caption").asText())));
    assertTrue(text.contains("0.85 of the front's scale"), "a reduction is said on the sheet");
  }

  @Test
  void noFileOrScriptHangsOnIt() {
    PDDocumentCatalog catalog = document.getDocumentCatalog();
    assertFalse(catalog.getCOSObject().containsKey(COSName.OPEN_ACTION));
    assertFalse(catalog.getCOSObject().containsKey(COSName.NAMES));
  }

  private static void collect(PDStructureNode node, List<PDStructureElement> figures) {
    for (Object kid : node.getKids()) {
      if (kid instanceof PDStructureElement element) {
        if (element.getStructureType().equals("Figure")) {
          figures.add(element);
        }
        collect(element, figures);
      }
    }
  }
}
