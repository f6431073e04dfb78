package dev.placket.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A pack keeps its weight: the whole file counts, pictures stay between 150 and 200 pixels per inch
 * (common practice), and what was foreseen is within a tenth of what came.
 */
class FitWeightTest {
  @TempDir Path dir;
  private String said = "";

  @BeforeEach
  void folder() throws IOException {
    Files.writeString(
        dir.resolve("front.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 90 100'>"
            + "<rect x='10' y='10' width='70' height='80' fill='none' stroke='#000'/></svg>");
    grain("cloth-swatch.png", 900, 1);
    grain("collar-detail.png", 1000, 2);
  }

  /** Grain like a photograph's, which no packing makes small. */
  private void grain(String name, int size, long seed) throws IOException {
    Random random = new Random(seed);
    BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < size; y++) {
      for (int x = 0; x < size; x++) {
        int grey = 60 + 80 * x / size + random.nextInt(60);
        image.setRGB(x, y, grey << 16 | (grey - 20) << 8 | (grey - 40));
      }
    }
    ImageIO.write(image, "png", dir.resolve(name).toFile());
  }

  private int run(Object... more) {
    Object[] args = new Object[more.length + 3];
    args[0] = "fit";
    args[1] = dir;
    args[2] = "--overwrite";
    System.arraycopy(more, 0, args, 3, more.length);
    Run run = Run.of(args);
    said = run.out() + run.err();
    return run.code();
  }

  private JsonNode json() throws IOException {
    return new ObjectMapper().readTree(dir.resolve("placket/fit.json").toFile());
  }

  /** The file that was written: its name is the folder's. */
  private long written() throws IOException {
    try (var files = Files.list(dir.resolve("placket"))) {
      Path pdf = files.filter(f -> f.toString().endsWith(".pdf")).findFirst().orElseThrow();
      return Files.size(pdf);
    }
  }

  private static double perInch(JsonNode placement) {
    JsonNode box = placement.path("inkedBox");
    double inches = (box.path("right").asDouble() - box.path("left").asDouble()) / 72;
    return placement.path("embedded").path("width").asInt() / inches;
  }

  @Test
  void sevenMillionBytesAreTheLimitIfNothingIsSaid() throws IOException {
    assertEquals(0, run(), said);
    assertEquals(7_000_000, json().path("weight").path("limit").asInt());
    assertEquals(written(), json().path("weight").path("bytes").asLong());
    assertTrue(json().path("weight").path("lowered").isNull());
    assertTrue(said.contains(" kB (limit 7,000.0 kB)."), said);
  }

  @Test
  void theWholeFileHoldsAndWasForeseen() throws IOException {
    // What is asked for lies between the weights at 150 and at 200, found by asking for too little.
    assertEquals(3, run("--max-size", "0.0001"), said);
    long least = written();
    for (double more : new double[] {1.1, 1.3, 1.6}) {
      long limit = Math.round(least * more);
      assertEquals(0, run("--max-size", String.valueOf(limit / 1e6)), said);
      JsonNode weight = json().path("weight");
      assertEquals(limit, weight.path("limit").asLong());
      assertEquals(written(), weight.path("bytes").asLong());
      assertTrue(written() <= limit, said);
      assertTrue(written() > 0.95 * limit, "as dense as the limit allows: " + said);
      assertEquals(written(), weight.path("lowered").path("foreseen").asDouble(), 0.1 * written());
      double lowest = 200;
      for (JsonNode p : json().path("sheets").get(0).path("placements")) {
        if (!p.path("embedded").isNull()) {
          assertTrue(perInch(p) > 149.5 && perInch(p) < 200.5, p.toString());
          lowest = Math.min(lowest, perInch(p));
        }
      }
      assertEquals(weight.path("lowered").path("perInch").asDouble(), lowest, 0.6);
    }
  }

  @Test
  void whatCannotHoldSaysByHowMuchAndWhichWeighMost() throws IOException {
    assertEquals(3, run("--max-size", "0.02"), said);
    JsonNode weight = json().path("weight");
    assertEquals(written() - 20_000, weight.path("over").asLong());
    JsonNode heaviest = weight.path("heaviest");
    assertEquals(3, heaviest.size());
    long sum = 0;
    for (int i = 0; i < 3; i++) {
      sum += heaviest.get(i).path("bytes").asLong();
      assertTrue(
          i == 0
              || heaviest.get(i).path("bytes").asLong()
                  <= heaviest.get(i - 1).path("bytes").asLong());
    }
    assertTrue(sum < written(), "rules, fonts and text weigh, too");
    assertEquals("front.svg", heaviest.get(2).path("source").asText());
    assertTrue(said.contains("is over the size limit by"), said);
    for (JsonNode p : json().path("sheets").get(0).path("placements")) {
      assertTrue(p.path("embedded").isNull() || perInch(p) > 149.5, "never soft for the weight");
    }
  }

  @Test
  void aWeightIsAboveZero() {
    assertEquals(2, run("--max-size", "0"));
    assertTrue(said.contains("--max-size"), said);
  }
}
