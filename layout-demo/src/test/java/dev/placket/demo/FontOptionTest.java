package dev.placket.demo;

import static java.nio.file.StandardCopyOption.REPLACE_EXISTING;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.demo.pack.ExamplePack;
import dev.placket.pictures.typeface.Typefaces;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Objects;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The text of drawings is set in what is given, else in what comes along; the report says so. An H
 * of Liberation Sans is 1144 of 2048 units wide and 1409 high (its glyf table); the typeface of the
 * test has the same outlines at twice the units to the em, hence half as large.
 */
class FontOptionTest {
  @TempDir Path dir;
  private Path flats;
  private Path font;

  @BeforeEach
  void files() throws IOException {
    flats = Files.createDirectory(dir.resolve("flats"));
    Files.writeString(
        flats.resolve("front.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 2048 2048'>"
            + "<text x='0' y='2000' font-size='2048' font-family='Sluice Trade GX'>H</text></svg>");
    font = Files.write(dir.resolve("own.ttf"), halved());
  }

  private static byte[] halved() throws IOException {
    try (InputStream in = Typefaces.class.getResourceAsStream("LiberationSans-Regular.ttf")) {
      byte[] font = Objects.requireNonNull(in).readAllBytes();
      byte[] old = "Liberation Sans".getBytes(StandardCharsets.UTF_16BE);
      byte[] own = "Sluice Trade GX".getBytes(StandardCharsets.UTF_16BE);
      for (int i = 0; i + old.length < font.length; i++) {
        if (Arrays.equals(font, i, i + old.length, old, 0, old.length)) {
          System.arraycopy(own, 0, font, i, own.length);
        }
      }
      ByteBuffer bytes = ByteBuffer.wrap(font);
      for (int t = 0; t < bytes.getShort(4); t++) {
        if (bytes.getInt(12 + 16 * t) == 0x68656164) { // head
          bytes.putShort(bytes.getInt(12 + 16 * t + 8) + 18, (short) 4096);
        }
      }
      return font;
    }
  }

  private static double width(String json) throws IOException {
    JsonNode box = new ObjectMapper().readTree(json).at("/files/0/inkedBox");
    return box.get("right").asDouble() - box.get("left").asDouble();
  }

  @Test
  void probeMeasuresInTheGivenOne() throws IOException {
    Path front = flats.resolve("front.svg");
    assertEquals(1144, width(Run.of("probe", front, "--json").out()), 2);
    assertEquals(572, width(Run.of("probe", front, "--json", "--font", font).out()), 2);
  }

  @Test
  void fitSaysWhatWasMissing() {
    Run without = Run.of("fit", flats, "--out", dir.resolve("a"));
    assertTrue(
        without.out().replaceAll("\\s+", " ").contains("Sluice Trade GX is not"), without.out());
    Run with = Run.of("fit", flats, "--font", font, "--out", dir.resolve("b"));
    assertEquals(0, with.code(), with.err());
    assertFalse(with.out().contains("Sluice Trade GX"), with.out());
  }

  @Test
  void prepareDrawsWithTheGivenOne() throws IOException {
    Path front = flats.resolve("front.svg");
    Path made = dir.resolve("made");
    assertEquals(0, Run.of("prepare", front, "--at", "50mm", "--out", made).code());
    Path own = dir.resolve("own");
    Run with = Run.of("prepare", front, "--at", "50mm", "--font", font, "--out", own);
    assertEquals(0, with.code(), with.err());
    // The same outline at half the size fills the same length of ink.
    assertEquals(
        ImageIO.read(made.resolve("front.png").toFile()).getWidth(),
        ImageIO.read(own.resolve("front.png").toFile()).getWidth());
  }

  @Test
  void aDescriptionNamesItsOwn() throws IOException {
    Path pack = Files.createDirectory(dir.resolve("pack"));
    Path file = ExamplePack.write(pack, ExamplePack.TEXT);
    Files.copy(flats.resolve("front.svg"), pack.resolve("front.svg"), REPLACE_EXISTING);
    Run without = Run.of("fit", file, "--out", dir.resolve("d"));
    assertTrue(
        without.out().replaceAll("\\s+", " ").contains("Sluice Trade GX is not"),
        without.out() + without.err());
    Files.copy(font, pack.resolve("own.ttf"));
    Files.writeString(file, ExamplePack.TEXT + "fonts: [own.ttf]\n");
    Run with = Run.of("fit", file, "--out", dir.resolve("e"));
    assertFalse(with.out().contains("Sluice Trade GX"), with.out());
    assertTrue(Files.exists(dir.resolve("e/fit.json")), with.err());
  }

  @Test
  void whatIsNoTypefaceIsRefused() throws IOException {
    Path wrong = Files.writeString(dir.resolve("wrong.ttf"), "no font");
    Run run = Run.of("fit", flats, "--font", wrong, "--out", dir.resolve("c"));
    assertEquals(2, run.code());
    assertTrue(run.err().contains("wrong.ttf: is no typeface"), run.err());
    assertFalse(Files.exists(dir.resolve("c")));
  }
}
