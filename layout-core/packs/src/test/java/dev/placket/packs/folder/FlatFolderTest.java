package dev.placket.packs.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.packs.flats.FlatFile;
import dev.placket.packs.flats.Reading;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDPageLabelRange;
import org.apache.pdfbox.pdmodel.common.PDPageLabels;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which flats a folder gives: files, pages and parts of files, with their roles. */
class FlatFolderTest {
  @TempDir private Path dir;

  private void svg(String name, String inside) throws IOException {
    Files.writeString(
        dir.resolve(name),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 50'>" + inside + "</svg>");
  }

  private static String group(String id, int left) {
    return "<g id='" + id + "'><rect x='" + left + "' y='5' width='20' height='30'/></g>";
  }

  /** A PDF with a page for each of these labels; a blank label gives none. */
  private void pdf(String name, String... labels) throws IOException {
    try (PDDocument document = new PDDocument()) {
      PDPageLabels all = new PDPageLabels(document);
      for (int i = 0; i < labels.length; i++) {
        PDPage page = new PDPage(new PDRectangle(100, 100));
        document.addPage(page);
        try (PDPageContentStream out = new PDPageContentStream(document, page)) {
          out.addRect(10, 10, 60 + i, 80);
          out.stroke();
        }
        PDPageLabelRange range = new PDPageLabelRange();
        if (labels[i].isEmpty()) {
          range.setStyle(PDPageLabelRange.STYLE_DECIMAL);
          range.setStart(i + 1);
        } else {
          range.setPrefix(labels[i]);
        }
        all.setLabelItem(i, range);
      }
      document.getDocumentCatalog().setPageLabels(all);
      document.save(dir.resolve(name).toFile());
    }
  }

  private List<String> read() throws Refusal {
    return FlatFolder.read(dir, Reading.DEFAULT).flats().stream()
        .map(f -> f.name() + " " + f.id() + " " + f.role() + " " + f.caption())
        .toList();
  }

  @Test
  void pagesOfAPdfHaveTheirRoleFromTheirLabels() throws Exception {
    pdf("style.pdf", "Coat back", "Coat front", "", "Collar detail");
    assertEquals(
        List.of(
            "style.pdf#2 Coat-front FRONT Front view",
            "style.pdf#1 Coat-back BACK Back view",
            "style.pdf#3 style-3 DETAIL Detail",
            "style.pdf#4 Collar-detail DETAIL Collar"),
        read());
  }

  @Test
  void aPdfOfOnePageHasItsRoleFromItsNameElseFromItsLabel() throws Exception {
    pdf("front.pdf", "Sleeve detail");
    pdf("drawing.pdf", "Coat back");
    assertEquals(
        List.of("front.pdf front FRONT Front view", "drawing.pdf drawing BACK Back view"), read());
  }

  @Test
  void linesOfTheNotesGiveRoles() throws Exception {
    pdf("style.pdf", "", "");
    Files.writeString(dir.resolve("pack.properties"), "role.style-1=front\nrole.style-2=Swatch\n");
    assertEquals(
        List.of("style.pdf#1 style-1 FRONT Front view", "style.pdf#2 style-2 SWATCH Swatch"),
        read());
    FlatFile front = FlatFolder.read(dir, Reading.DEFAULT).flats().get(0);
    assertEquals("role.style-1", front.because());
    Files.writeString(dir.resolve("pack.properties"), "role.style-1=frnt\nrole.style-9=back\n");
    Refusal refusal = assertThrows(Refusal.class, this::read);
    assertEquals(2, refusal.messages().size(), refusal.messages().toString());
    assertTrue(
        refusal.messages().get(0).contains("role.style-1=frnt: is no role; there are front, back"),
        refusal.messages().get(0));
    assertTrue(
        refusal.messages().get(1).contains("the folder has no picture 'style-9'"),
        refusal.messages().get(1));
  }

  @Test
  void captionsAreInTheLanguageOfThePackNotOfTheFileNames() throws Exception {
    for (String name : List.of("vorne", "dos", "kragen-detalle", "détail-dos", "muestra", "yan")) {
      svg(name + ".svg", "<path d='M0 0h9v9z'/>");
    }
    assertEquals(
        List.of("Front view", "Back view", "Side view", "Detail, Back view", "Kragen", "Swatch"),
        captions());
    // Translations from memory.
    Files.writeString(dir.resolve("pack.properties"), "languages=de\n");
    assertEquals(
        List.of(
            "Vorderansicht",
            "Rückansicht",
            "Seitenansicht",
            "Detail, Rückansicht",
            "Kragen",
            "Stoffmuster"),
        captions());
    Files.writeString(
        dir.resolve("pack.properties"), "languages=en, zh-Hans\nglossary=terms.csv\n");
    Files.writeString(dir.resolve("terms.csv"), "en,zh-Hans,de\nCollar,领子,Kragen\n");
    assertEquals(
        List.of(
            "Front view / 正面图",
            "Back view / 背面图",
            "Side view / 侧面图",
            "Detail, Back view / 细节, 背面图",
            "Collar / 领子",
            "Swatch / 布样"),
        captions());
  }

  private List<String> captions() throws Refusal {
    return FlatFolder.read(dir, Reading.DEFAULT).flats().stream().map(FlatFile::caption).toList();
  }

  @Test
  void groupsThatStandApartAreFlats() throws Exception {
    svg("style.svg", group("front", 5) + group("back", 40) + group("cuff", 70));
    assertEquals(
        List.of(
            "style.svg#front front FRONT Front view",
            "style.svg#back back BACK Back view",
            "style.svg#cuff cuff DETAIL Cuff"),
        read());
  }

  @Test
  void groupsOfOneDrawingStayTogether() throws Exception {
    svg("front.svg", group("front", 5) + group("back", 15));
    svg("side.svg", group("front", 5) + group("back", 40) + "<path d='M0 0h9v9z'/>");
    svg("back.svg", group("front", 5) + group("cuff", 40));
    assertEquals(
        List.of(
            "front.svg front FRONT Front view",
            "back.svg back BACK Back view",
            "side.svg side SIDE Side view"),
        read());
  }

  @Test
  void partsOfOneNameAreKeptApartByTheirFiles() throws Exception {
    svg("a.svg", group("front", 5) + group("cuff-detail", 40) + group("hem-detail", 70));
    svg("b.svg", group("back", 5) + group("cuff-detail", 40) + group("hem-detail", 70));
    assertEquals(
        List.of(
            "a.svg#front front",
            "b.svg#back back",
            "a.svg#cuff-detail a.svg#cuff-detail",
            "a.svg#hem-detail a.svg#hem-detail",
            "b.svg#cuff-detail b.svg#cuff-detail",
            "b.svg#hem-detail b.svg#hem-detail"),
        FlatFolder.read(dir, Reading.DEFAULT).flats().stream()
            .map(f -> f.name() + " " + f.id())
            .toList());
  }

  @Test
  void aReaderOfWholeFilesAsksForAFileOfOnePage() throws Exception {
    pdf("style.pdf", "front", "back");
    Path file = dir.resolve("style.pdf");
    PictureException e =
        assertThrows(
            PictureException.class,
            () -> PictureReader.probe(PictureSource.of(file), ReadLimits.DEFAULT));
    assertEquals(
        file
            + ": has 2 pages, where one drawing is asked for; export the page as a file of its own.",
        e.getMessage());
  }

  @Test
  void twoFrontsAreRefusedWithTheWayOut() throws Exception {
    pdf("style.pdf", "front", "front view 2");
    Refusal refusal = assertThrows(Refusal.class, this::read);
    assertTrue(
        refusal.messages().get(0).contains("has 2 fronts, style.pdf#1, style.pdf#2"),
        refusal.messages().toString());
    assertTrue(
        refusal.messages().get(0).contains("role.NAME in pack.properties"),
        refusal.messages().toString());
  }
}
