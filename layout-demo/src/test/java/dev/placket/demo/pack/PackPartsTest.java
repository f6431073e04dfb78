package dev.placket.demo.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.demo.FitSchema;
import dev.placket.demo.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A pack over the size limit is split at whole sheets: the factory gets all of it. */
class PackPartsTest {
  private static final int SHEETS = 4;

  @TempDir private Path dir;

  /** Sheets with some 40 kB of paths each, which have no pixels that could be fewer. */
  @BeforeEach
  void pack() throws IOException {
    Random random = new Random(1);
    StringBuilder pack =
        new StringBuilder("format: placket-pack/1\nfields: {style-number: MG-9}\nsheets:\n");
    for (int i = 1; i <= SHEETS; i++) {
      StringBuilder path = new StringBuilder("M50,50");
      for (int p = 0; p < 9000; p++) {
        path.append(" L").append(random.nextInt(10000) / 100.0);
        path.append(',').append(random.nextInt(10000) / 100.0);
      }
      Files.writeString(
          dir.resolve("s" + i + ".svg"),
          "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 100'>"
              + "<path fill='none' stroke='#000' d='"
              + path
              + "'/></svg>");
      pack.append(
          "  s%d: {name: Sheet%d, areas: [all], windows: {all: }, flats: {f%d: {file: s%d.svg, role: front}}}\n"
              .formatted(i, i, i, i));
    }
    Files.writeString(dir.resolve("pack.yaml"), pack);
  }

  private Run fit(double megabytes) {
    return Run.of(
        "fit",
        dir.resolve("pack.yaml"),
        "--out",
        dir.resolve("out"),
        "--overwrite",
        "--max-size",
        megabytes);
  }

  private List<Path> parts() throws IOException {
    try (var files = Files.list(dir.resolve("out"))) {
      return files.filter(f -> f.toString().matches(".*-of-[0-9]+\\.pdf")).sorted().toList();
    }
  }

  private static List<String> pages(Path pdf) throws IOException {
    List<String> pages = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      for (int i = 1; i <= document.getNumberOfPages(); i++) {
        PDFTextStripper text = new PDFTextStripper();
        text.setStartPage(i);
        text.setEndPage(i);
        pages.add(text.getText(document));
      }
    }
    return pages;
  }

  @Test
  void aPackUnderTheLimitIsOneFile() throws IOException {
    Run run = fit(7);
    assertEquals(0, run.code(), run.err());
    assertEquals(List.of(), parts());
    assertTrue(run.out().contains("Send MG-9.pdf: "), run.out());
  }

  /** Three sheets of four go into two thirds of its size at the most in two files. */
  @Test
  void partsKeepTheLimitAndTogetherHaveEverySheetOnce() throws IOException {
    fit(7);
    long whole = Files.size(dir.resolve("out/MG-9.pdf"));
    double limit = whole * 0.6 / 1e6;
    Run run = fit(limit);
    assertEquals(0, run.code(), run.out() + run.err());
    List<Path> parts = parts();
    // Less than 0.6 of it holds two of four alike sheets, so two files are the fewest.
    assertEquals(2, parts.size());
    List<String> names = new ArrayList<>();
    for (Path part : parts) {
      assertTrue(Files.size(part) <= limit * 1e6, part + " has " + Files.size(part));
      String stem = part.getFileName().toString().replace(".pdf", "");
      for (String page : pages(part)) {
        assertTrue(page.contains(stem), stem + " in " + page);
        names.add(page);
      }
    }
    assertEquals(SHEETS, names.size());
    // The whole file stays, without names of parts.
    assertEquals(SHEETS, pages(dir.resolve("out/MG-9.pdf")).size());
    assertFalse(pages(dir.resolve("out/MG-9.pdf")).get(0).contains("-of-"));
    assertTrue(run.out().contains("Send both parts, each in a mail of its own:"), run.out());
    String json = Files.readString(dir.resolve("out/fit.json"));
    assertEquals(List.of(), FitSchema.errors(json));
    var stated = new ObjectMapper().readTree(json).path("weight").path("parts");
    assertEquals(2, stated.size());
    assertEquals(1, stated.path(0).path("first").asInt());
    assertEquals(SHEETS, stated.path(1).path("last").asInt());
    assertEquals(Files.size(parts.get(0)), stated.path(0).path("bytes").asLong());
  }

  /** A sheet that is over the limit by itself stands alone, and the exit code says so. */
  @Test
  void aSheetOverTheLimitIsNamed() throws IOException {
    Run run = fit(0.01);
    assertEquals(3, run.code());
    assertEquals(SHEETS, parts().size());
    assertTrue(run.out().contains("Over the size limit by itself: sheet 1 ("), run.out());
  }

  @Test
  void partsOfAnEarlierRunAreRemoved() throws IOException {
    fit(0.01);
    assertEquals(SHEETS, parts().size());
    fit(7);
    assertEquals(List.of(), parts());
  }

  @Test
  void anExistingFileIsNotOverwritten() throws IOException {
    Files.createDirectories(dir.resolve("out"));
    Path other = Files.writeString(dir.resolve("out/MG-9-1-of-4.pdf"), "mine");
    Run run =
        Run.of("fit", dir.resolve("pack.yaml"), "--out", dir.resolve("out"), "--max-size", 0.01);
    assertEquals(2, run.code());
    assertTrue(run.err().contains("MG-9-1-of-4.pdf"), run.err());
    assertEquals("mine", Files.readString(other));
    assertFalse(Files.exists(dir.resolve("out/MG-9.pdf")));
  }
}
