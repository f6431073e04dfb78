package dev.placket.demo.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.demo.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFStreamEngine;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.contentstream.operator.OperatorProcessor;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One glossary gives the second language of folders and descriptions; the PDF states which. */
class LanguagesTest {
  private static final String SVG =
      "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 90'><path d='M5 5h90v80z'/></svg>";

  private static final String GLOSSARY =
      """
      en,de
      Notes,Hinweise
      wool twill,Wollköper
      second fit,zweite Anprobe
      Hem turned twice,Saum zweimal eingeschlagen
      "Sheet {sheet}, style {style-number}","Blatt {sheet}, Modell {style-number}"
      Collar,Kragen
      """;

  private static final String DESCRIPTION =
      """
      format: placket-pack/1
      languages: [en, de]
      glossary: ../terms.csv
      fields: {style-number: MG-3107, fabric: wool twill}
      sheets:
        flats:
          name: Flats
          columns: [1fr, 60mm]
          areas: [views notes]
          windows: {views: }
          cells:
            notes:
              caption: Notes
              text: |-
                Hem turned twice
                Pressed open
                {fabric}
                Sheet {sheet}, style {style-number}
          flats:
            front: {file: front.svg, role: front}
            collar: {file: collar.svg, role: detail, caption: Collar}
      """;

  @TempDir Path dir;
  private Path style;

  @BeforeEach
  void files() throws IOException {
    style = Files.createDirectory(dir.resolve("style"));
    Files.writeString(style.resolve("front.svg"), SVG);
    Files.writeString(style.resolve("collar.svg"), SVG);
    Files.writeString(dir.resolve("terms.csv"), GLOSSARY);
  }

  private Run fit(Path what) {
    return Run.of("fit", what, "--out", dir.resolve("out"), "--overwrite");
  }

  private PDDocument made(String name) throws IOException {
    return Loader.loadPDF(dir.resolve("out").resolve(name).toFile());
  }

  private static String text(PDDocument pdf) throws IOException {
    return new PDFTextStripper().getText(pdf);
  }

  /** The language of each span of the first page. */
  private static List<String> spans(PDDocument pdf) throws IOException {
    List<String> languages = new ArrayList<>();
    PDFStreamEngine engine = new PDFStreamEngine() {};
    engine.addOperator(
        new OperatorProcessor(engine) {
          @Override
          public void process(Operator operator, List<COSBase> operands) {
            if (operands.get(0).equals(COSName.getPDFName("Span"))) {
              PDPropertyList p =
                  pdf.getPage(0).getResources().getProperties((COSName) operands.get(1));
              languages.add(p.getCOSObject().getString(COSName.LANG));
            }
          }

          @Override
          public String getName() {
            return "BDC";
          }
        });
    engine.processPage(pdf.getPage(0));
    return languages;
  }

  @Test
  void aDescriptionIsPrintedInBothLanguages() throws IOException {
    Files.writeString(style.resolve("pack.yaml"), DESCRIPTION);
    Run run = fit(style.resolve("pack.yaml"));
    assertEquals(0, run.code(), run.err());
    try (PDDocument pdf = made("MG-3107.pdf")) {
      assertEquals("en", pdf.getDocumentCatalog().getLanguage());
      String text = text(pdf);
      for (String line :
          List.of(
              "Notes / Hinweise",
              "Hem turned twice\nPressed open\nwool twill\nSheet 1, style MG-3107",
              "Saum zweimal eingeschlagen\nPressed open\nWollköper\nBlatt 1, Modell MG-3107",
              "Front view / Vorderansicht",
              "Collar / Kragen",
              "not to scale / nicht maßstäblich")) {
        assertTrue(text.contains(line), line + " in " + text);
      }
      List<String> spans = spans(pdf);
      assertFalse(spans.isEmpty());
      assertTrue(spans.stream().allMatch("de"::equals), spans.toString());
    }
    String report = run.out().replaceAll("\\s+", " ");
    assertTrue(
        report.contains("Not translated into de, printed as written (2): 'Pressed open', 'Flats'."),
        report);
    assertFalse(report.contains("Not translated into en"), report);
  }

  @Test
  void theSecondLanguageStandsAlone() throws IOException {
    Files.writeString(
        style.resolve("pack.yaml"), DESCRIPTION.replace("glossary:", "printed: de\nglossary:"));
    assertEquals(0, fit(style.resolve("pack.yaml")).code());
    try (PDDocument pdf = made("MG-3107.pdf")) {
      assertEquals("de", pdf.getDocumentCatalog().getLanguage());
      String text = text(pdf);
      assertTrue(text.contains("Vorderansicht") && text.contains("Wollköper"), text);
      assertFalse(text.contains("Front view") || text.contains("wool"), text);
      assertTrue(text.contains("Pressed open"), "what has no translation is still there");
      assertEquals(List.of(), spans(pdf));
      String xmp = new String(pdf.getDocumentCatalog().getMetadata().toByteArray(), "UTF-8");
      assertTrue(xmp.contains("<dc:language><rdf:Bag><rdf:li>de<"), xmp);
    }
  }

  @Test
  void aFolderIsPrintedInTheLanguagesOfItsNotes() throws IOException {
    Files.writeString(
        style.resolve("pack.properties"),
        "languages=de, en\nglossary=../terms.csv\nstage=second fit\nfabric=boiled wool\n");
    Run run = fit(style);
    assertEquals(0, run.code(), run.err());
    try (PDDocument pdf = made("style.pdf")) {
      assertEquals("de", pdf.getDocumentCatalog().getLanguage());
      String text = text(pdf).replaceAll("\\s+", " ");
      for (String line :
          List.of(
              "Zeichnungsblatt / Flat sheet",
              "Vorderansicht / Front view",
              "Kragen / Collar",
              "zweite Anprobe",
              "boiled wool",
              "Keine Maße aus den Zeichnungen abnehmen.",
              "Do not take measurements from the drawings.")) {
        assertTrue(text.contains(line), line + " in " + text);
      }
      assertTrue(spans(pdf).contains("en"));
      assertFalse(spans(pdf).contains("de"));
    }
    String report = run.out().replaceAll("\\s+", " ");
    assertTrue(
        report.contains("Not translated into de, printed as written (1): 'boiled wool'."), report);
    assertFalse(report.contains("Ignored"), report);
  }

  @Test
  void aGlossaryAtFaultIsRefusedWithItsLine() throws IOException {
    Files.writeString(dir.resolve("terms.csv"), GLOSSARY + "Hem turned twice,Saum\n");
    Files.writeString(style.resolve("pack.yaml"), DESCRIPTION);
    Run run = fit(style.resolve("pack.yaml"));
    assertEquals(2, run.code());
    assertTrue(run.err().contains("line 8: has 'Hem turned twice' again, as line 5"), run.err());
  }
}
