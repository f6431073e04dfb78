package dev.placket.demo.pack;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.density.DensityTargets;
import dev.placket.packs.compose.Composer;
import dev.placket.packs.compose.PackLimits;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackReader;
import dev.placket.packs.description.RangeReader;
import dev.placket.packs.flats.Reading;
import dev.placket.packs.refusal.Refusal;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Map;
import java.util.stream.Stream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;

/**
 * A description cut short or with a byte changed gives messages that name the file, never a trace.
 */
class HostileTest {
  private static Path dir = Path.of("");
  private static final byte[] GOOD = ExamplePack.TEXT.getBytes(StandardCharsets.UTF_8);

  @BeforeContainer
  static void folder() throws IOException {
    dir = Files.createTempDirectory("placket-hostile");
    ExamplePack.write(dir, ExamplePack.TEXT);
  }

  @AfterContainer
  static void clear() throws IOException {
    try (Stream<Path> all = Files.walk(dir)) {
      all.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(java.io.File::delete);
    }
  }

  private static void answered(byte[] bytes) throws IOException {
    Path file = Files.write(dir.resolve("changed.yaml"), bytes);
    try {
      Described read = PackReader.read(file);
      new Composer(
              read,
              DensityTargets.DEFAULT,
              false,
              Composer.lettering(read),
              Reading.DEFAULT,
              PackLimits.DEFAULT.rows(),
              RangeReader.NONE)
          .pack(Map.of());
    } catch (Refusal refusal) {
      assertFalse(refusal.messages().isEmpty());
      for (String message : refusal.messages()) {
        assertTrue(message.contains("changed.yaml"), message);
        assertFalse(message.contains("Exception"), message);
        assertTrue(message.indexOf('\n') < 0, message);
      }
    }
  }

  @Property(tries = 400)
  void cutAnywhere(@ForAll @IntRange(min = 0, max = 2200) int at) throws IOException {
    answered(Arrays.copyOf(GOOD, Math.min(at, GOOD.length)));
  }

  @Property(tries = 1200)
  void changedAnywhere(@ForAll @IntRange(min = 0, max = 1_000_000) int at, @ForAll byte value)
      throws IOException {
    byte[] bytes = GOOD.clone();
    bytes[at % bytes.length] = value;
    answered(bytes);
  }

  @Property(tries = 600)
  void aWordPutElsewhere(
      @ForAll @IntRange(min = 0, max = 1_000_000) int from,
      @ForAll @IntRange(min = 0, max = 1_000_000) int to,
      @ForAll @IntRange(min = 1, max = 12) int length)
      throws IOException {
    byte[] bytes = GOOD.clone();
    int source = from % (bytes.length - length);
    System.arraycopy(GOOD, source, bytes, to % (bytes.length - length), length);
    answered(bytes);
  }

  @Example
  void aliasesAreRefusedHoweverTheyNest() throws IOException, Refusal {
    StringBuilder bomb = new StringBuilder("format: placket-pack/1\nfields:\n  a: &a [x, x]\n");
    for (char c = 'b'; c <= 'z'; c++) {
      char before = (char) (c - 1);
      bomb.append("  " + c + ": &" + c + " [*" + before + ", *" + before + "]\n");
    }
    Path file = Files.writeString(dir.resolve("changed.yaml"), bomb);
    assertTrue(
        PackReader.read(file).faults().all().stream().anyMatch(f -> f.found().contains("alias")));
  }

  @Example
  void deepNestingAndGreatSizeAreRefused() throws IOException {
    answered(("format: " + "[".repeat(100_000)).getBytes(StandardCharsets.UTF_8));
    answered(("format: " + "{a: ".repeat(5_000)).getBytes(StandardCharsets.UTF_8));
    byte[] large = new byte[5_000_001];
    Arrays.fill(large, (byte) '#');
    answered(large);
  }
}
