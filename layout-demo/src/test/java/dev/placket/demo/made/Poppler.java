package dev.placket.demo.made;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Assumptions;

/** Poppler's programs; a test that needs one is skipped where it is missing. */
final class Poppler {
  private Poppler() {}

  /** What a program prints. */
  static String run(Path work, String... command) throws IOException, InterruptedException {
    Path said = work.resolve("said.txt");
    Process process;
    try {
      process = new ProcessBuilder(command).redirectOutput(said.toFile()).start();
    } catch (IOException e) {
      Assumptions.abort("skipped: no " + command[0] + " on this machine");
      throw e;
    }
    assertEquals(0, process.waitFor(), String.join(" ", command));
    return Files.readString(said, StandardCharsets.UTF_8);
  }

  /** The rows of the listing of images that are pictures, not the masks of pictures. */
  static List<String[]> images(Path work, Path pdf) throws IOException, InterruptedException {
    List<String[]> rows = new ArrayList<>();
    for (String line : run(work, "pdfimages", "-list", pdf.toString()).lines().skip(2).toList()) {
      String[] columns = line.strip().split("\\s+");
      if (!columns[2].equals("smask")) {
        rows.add(columns);
      }
    }
    return rows;
  }
}
