package dev.placket.demo.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.placket.demo.Run;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Markup in every text of a description, and in names of files, stays text on the report page. */
class PlantedMarkupTest {
  /** {@code T1} to {@code T12} stand for text with a tag. */
  private static final String PACK =
      """
      format: placket-pack/1
      fields: {style-number: T1, sample-size: T2}
      header:
        rows: [10mm]
        areas: [style]
        cells:
          style: {caption: T3, text: "{style-number}"}
      sheets:
        flats:
          name: T4
          columns: [2fr, 1fr]
          areas:
            - views note
          cells:
            note: {caption: T5, text: T6}
          windows: {views: }
          flats:
            front:
              file: <i>front.svg
              role: front
              caption: T7
              note: T8
              points: {p: {element: waist}}
              callouts: {c: {point: p, text: T9}}
        list:
          name: T10
          areas: [list]
          tables:
            list:
              columns: [T11, Place]
              rows: [[T12, body]]
      """;

  private static final String DRAWING =
      "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 120' fill='none' stroke='#000'>"
          + "<path id='waist' d='M10,10 H90 V110 H10 Z'/><text x='20' y='40' fill='#000'"
          + " font-family='&lt;u>'>a</text></svg>";

  @TempDir private Path work;

  @Test
  void staysText() throws IOException {
    assumeTrue(File.separatorChar == '/', "Windows has no < in the names of files");
    Path folder = Files.createDirectory(work.resolve("<b onclick=x>"));
    Files.writeString(folder.resolve("<i>front.svg"), DRAWING);
    String text = PACK.replaceAll("\\bT(\\d+)", "<script>$1</script>");
    Path pack = Files.writeString(folder.resolve("pack.yaml"), text);
    Run run = Run.of("fit", pack, "--out", work.resolve("made"));
    assertEquals(0, run.code(), run.err());
    String page = report().toLowerCase(Locale.ROOT);
    for (String tag : List.of("<script", "</script", "<i>", "<b ", "<u>")) {
      assertFalse(page.contains(tag), tag);
    }
    // What the page shows of it: both sheets, the flat's caption, its file and typeface.
    for (int shown : new int[] {4, 7, 10}) {
      assertTrue(page.contains("&lt;script&gt;" + shown + "&lt;/script&gt;"), "T" + shown);
    }
    for (String shown : List.of("&lt;i&gt;front.svg", "&lt;u&gt;")) {
      assertTrue(page.contains(shown), shown);
    }
  }

  private String report() throws IOException {
    try (Stream<Path> made = Files.list(work.resolve("made"))) {
      Path report = made.filter(p -> p.toString().endsWith("report.html")).findAny().orElseThrow();
      return Files.readString(report);
    }
  }
}
