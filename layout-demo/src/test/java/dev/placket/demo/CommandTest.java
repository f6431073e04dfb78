package dev.placket.demo;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command as it is called: what it writes, what it refuses, and with which exit code. */
class CommandTest {
  private static final String GOOD =
      "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 90 100'>"
          + "<rect x='10' y='10' width='70' height='80' fill='none' stroke='#000'/></svg>";

  @TempDir Path dir;
  private Path flats;
  private Path out;
  private String said = "";

  @BeforeEach
  void folders() throws IOException {
    flats = Files.createDirectory(dir.resolve("style"));
    out = dir.resolve("made");
  }

  @Test
  void theSameFolderGivesTheSameBytes() throws IOException {
    put("front.svg", GOOD);
    assertEquals(0, fit(flats));
    byte[] pdf = Files.readAllBytes(made(".pdf").get(0));
    byte[] json = Files.readAllBytes(out.resolve("fit.json"));
    assertEquals(0, fit(flats, "--overwrite"), said);
    assertArrayEquals(pdf, Files.readAllBytes(made(".pdf").get(0)));
    assertArrayEquals(json, Files.readAllBytes(out.resolve("fit.json")));
  }

  @Test
  void everyFormatThatIsReadIsTakenFromAFolder() throws Exception {
    put("front.svg", GOOD);
    BufferedImage square = new BufferedImage(400, 300, BufferedImage.TYPE_INT_RGB);
    square.createGraphics().fillRect(0, 0, 400, 300);
    for (int i = 100; i < 200; i++) {
      square.setRGB(i, i, 0);
    }
    List<String> endings = List.of("png", "jpg", "gif", "BMP", "tif");
    for (String ending : endings) {
      String writer = ending.equals("tif") ? "tiff" : ending;
      assertTrue(
          ImageIO.write(square, writer, flats.resolve(ending + "-detail." + ending).toFile()));
    }
    put("notes.txt", "left alone");
    int code = fit(flats);
    assertTrue(code == 0 || code == 3, said);
    String json = Files.readString(out.resolve("fit.json"));
    for (String ending : endings) {
      assertTrue(json.contains(ending + "-detail." + ending), ending + ": " + said);
    }
    assertTrue(said.contains("Ignored, not picture files by name: notes.txt"), said);
  }

  /** So few pixels that its least size is also the greatest at which it is not quite blurred. */
  @Test
  void aTinyPictureIsPlacedAndSaidToBeSoft() throws Exception {
    put("front.svg", GOOD);
    for (int side : new int[] {7, 11, 13, 23}) {
      BufferedImage tiny = new BufferedImage(side, side, BufferedImage.TYPE_INT_RGB);
      ImageIO.write(tiny, "png", flats.resolve("dot" + side + "-detail.png").toFile());
    }
    assertEquals(3, fit(flats), said);
    assertTrue(said.contains("S soft"), said);
  }

  @Test
  void anotherDrawingGivesTheDocumentAnotherId() throws IOException {
    put("front.svg", GOOD);
    assertEquals(0, fit(flats));
    String first = id(made(".pdf").get(0));
    put("front.svg", GOOD.replace("rect x='10'", "rect x='11'"));
    assertEquals(0, fit(flats, "--overwrite"));
    assertNotEquals(first, id(made(".pdf").get(0)));
  }

  @Test
  void whoMayReadTheFolderMayReadTheSheet() throws IOException {
    assumeTrue(FileSystems.getDefault().supportedFileAttributeViews().contains("posix"));
    put("front.svg", GOOD);
    assertEquals(0, fit(flats));
    Path usual = Files.writeString(out.resolve("usual.txt"), "a file as any program makes it");
    assertEquals(
        Files.getPosixFilePermissions(usual), Files.getPosixFilePermissions(made(".pdf").get(0)));
  }

  @Test
  void aFaultOfTheProgramTakesOneLine() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(bytes, true, StandardCharsets.UTF_8);
    CommandLine line = Main.line(stream, stream).addSubcommand("broken", new Broken());
    assertEquals(1, line.execute("broken"));
    String message = bytes.toString(StandardCharsets.UTF_8);
    assertEquals(1, message.lines().count(), message);
    assertTrue(message.contains("broken on purpose"), message);
  }

  @Command(name = "broken")
  private static final class Broken implements Runnable {
    @Override
    public void run() {
      throw new IllegalStateException("broken on purpose");
    }
  }

  @Test
  void nothingIsOverwrittenUnasked() throws IOException {
    put("front.svg", GOOD);
    Files.createDirectories(out);
    Files.writeString(out.resolve("fit.json"), "mine");
    assertEquals(2, fit(flats));
    assertTrue(said.contains("fit.json"), said);
    assertEquals("mine", Files.readString(out.resolve("fit.json")));
    assertEquals(0, made(".pdf").size());
  }

  @Test
  void anEmptyFolderIsRefused() {
    refused("");
  }

  @Test
  void twoFrontsAreRefused() throws IOException {
    put("front.svg", GOOD);
    put("front-2.svg", GOOD);
    refused("front-2.svg");
  }

  @Test
  void aTextFileNamedPngIsRefused() throws IOException {
    put("front.png", "no picture at all");
    refused("front.png");
  }

  @Test
  void aTruncatedPngIsRefused() throws IOException {
    byte[] whole = Files.readAllBytes(demo().resolve("button-detail.png"));
    Files.write(flats.resolve("front.png"), Arrays.copyOf(whole, whole.length / 2));
    refused("front.png");
  }

  @Test
  void aDrawingWithoutSizeIsRefused() throws IOException {
    put("front.svg", GOOD.replace("viewBox='0 0 90 100'", ""));
    refused("front.svg");
  }

  @Test
  void aDrawingWithAnEmptyViewBoxIsRefused() throws IOException {
    put("front.svg", GOOD.replace("0 0 90 100", "0 0 0 0"));
    refused("front.svg");
  }

  @Test
  void anExternalEntityIsRefused() throws IOException {
    put("front.svg", "<!DOCTYPE svg [<!ENTITY e SYSTEM 'file:///etc/hostname'>]>" + GOOD);
    refused("front.svg");
  }

  @Test
  void aHundredMillionNestedUsesAreRefused() throws IOException {
    StringBuilder b = new StringBuilder("<defs><path id='l0' d='M0 0h1'/>");
    for (int level = 1; level <= 8; level++) {
      String use = "<use href='#l" + (level - 1) + "'/>";
      b.append("<g id='l").append(level).append("'>").append(use.repeat(10)).append("</g>");
    }
    put("front.svg", GOOD.replace("<rect", b + "</defs><use href='#l8'/><rect"));
    refused("front.svg");
  }

  @Test
  void aFileInPlaceOfTheFolderToWriteToIsRefused() throws IOException {
    put("front.svg", GOOD);
    Files.writeString(out, "a file");
    assertEquals(2, fit(flats));
    assertEquals("a file", Files.readString(out));
  }

  @Test
  void tooManyFlatsFindNoRoomAndNothingIsWritten() throws IOException {
    put("front.svg", GOOD);
    for (int i = 0; i < 24; i++) {
      put("inside-" + i + ".svg", GOOD);
    }
    // Twenty-five views of at least 40 mm with 5 mm between need more than the 277 by 190 mm of A4.
    assertEquals(4, fit(flats), said);
    assertFalse(Files.exists(out.resolve("fit.json")));
    assertEquals(0, made(".pdf").size());
  }

  /** What is no view goes on a further sheet, with the header again and the right number on it. */
  @Test
  void whatHasNoRoomGoesOnOverAFurtherSheet() throws IOException {
    put("front.svg", GOOD);
    // At least 22 by 25 mm, with captions and 5 mm between 27 by 38 mm: 276 by 151 mm have the area
    // of forty.
    for (int i = 10; i < 60; i++) {
      put("shot-" + i + "-photo.svg", GOOD);
    }
    assertEquals(0, fit(flats), said);
    assertTrue(said.replaceAll("\\s+", " ").contains("they continue over 2 sheets;"), said);
    JsonNode sheets = new ObjectMapper().readTree(out.resolve("fit.json").toFile()).path("sheets");
    assertEquals(2, sheets.size());
    List<String> placed = new ArrayList<>();
    for (int i = 0; i < 2; i++) {
      JsonNode further = sheets.get(i).path("further");
      assertEquals(i + 1, further.path("sheet").asInt());
      assertEquals(2, further.path("of").asInt());
      assertTrue(further.path("provenFewest").asBoolean());
      assertTrue(further.path("scale").asDouble() <= further.path("bound").asDouble());
      sheets.get(i).path("placements").forEach(p -> placed.add(p.path("flat").asText()));
      assertTrue(Files.exists(out.resolve("style-" + (i + 1) + ".png")));
    }
    List<String> order = new ArrayList<>(List.of("front"));
    IntStream.range(10, 60).forEach(i -> order.add("shot-" + i + "-photo"));
    assertEquals(order, placed);
    try (PDDocument pdf = Loader.loadPDF(out.resolve("style.pdf").toFile())) {
      PDFTextStripper text = new PDFTextStripper();
      text.setStartPage(2);
      assertTrue(text.getText(pdf).contains("2 of 2"), text.getText(pdf));
      assertTrue(text.getText(pdf).contains("Style no."), text.getText(pdf));
    }
  }

  private void refused(String name) {
    assertEquals(2, fit(flats));
    assertTrue(said.contains(name), said);
    assertFalse(said.contains("Exception"), said);
    assertFalse(Files.exists(out.resolve("fit.json")));
  }

  private int fit(Path folder, String... more) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(bytes, true, StandardCharsets.UTF_8);
    List<String> fixed = List.of("fit", folder.toString(), "--out", out.toString());
    String[] args = Stream.concat(fixed.stream(), Stream.of(more)).toArray(String[]::new);
    int code = Main.run(args, stream, stream);
    said = bytes.toString(StandardCharsets.UTF_8);
    return code;
  }

  private void put(String name, String content) throws IOException {
    Files.writeString(flats.resolve(name), content);
  }

  private List<Path> made(String ending) throws IOException {
    if (!Files.isDirectory(out)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(out)) {
      return files.filter(f -> f.toString().endsWith(ending)).sorted().toList();
    }
  }

  private static String id(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return document.getDocument().getDocumentID().toString();
    }
  }

  private static Path demo() {
    return Path.of("src/demo/mg-3107/flats").toAbsolutePath();
  }
}
