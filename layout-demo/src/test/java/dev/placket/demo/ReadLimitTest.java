package dev.placket.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a picture may ask for is set in every command alike, and the refusal names the option. */
class ReadLimitTest {
  @TempDir Path dir;
  private Path flats;

  /** Four elements, three deep, one of them used twice, a line of 80 units in dashes of 4 and 4. */
  private static final String DRAWING =
      "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 90 100'><g>"
          + "<path id='a' d='M10 10H80V90' fill='none' stroke='#000' stroke-dasharray='4'/></g>"
          + "<use href='#a' y='5'/></svg>";

  @BeforeEach
  void folder() throws IOException {
    flats = Files.createDirectory(dir.resolve("style"));
  }

  private Run run(String command, String file, String limit) throws IOException {
    Path picture = flats.resolve(file);
    if (file.endsWith("png")) {
      BufferedImage image = new BufferedImage(300, 400, BufferedImage.TYPE_INT_ARGB);
      image.createGraphics().drawRect(10, 10, 250, 350);
      ImageIO.write(image, "png", picture.toFile());
    } else {
      Files.writeString(picture, DRAWING);
    }
    Files.writeString(
        flats.resolve("pack.yaml"),
        """
        format: placket-pack/1
        sheets:
          flats:
            name: Flats
            areas: [views]
            windows: {views: }
            flats:
              front: {file: %s, role: front, allow-soft: true}
        """
            .formatted(file)
            .replace(", allow-soft: true", ""));
    Path out = dir.resolve("out");
    Object option = "--limit";
    return switch (command) {
      case "fit" -> Run.of("fit", flats, "--out", out, "--allow-soft", option, limit);
      case "pack" ->
          Run.of("fit", flats.resolve("pack.yaml"), "--out", out, "--allow-soft", option, limit);
      case "probe" -> Run.of("probe", picture, option, limit);
      default -> Run.of("prepare", picture, "--at", "20mm", "--out", out, option, limit);
    };
  }

  /** 300 by 400 pixels are 120,000; whatever is lowered below what the file has is exceeded. */
  @ParameterizedTest
  @CsvSource({
    "pixels=119999, front.png, 120000",
    "bytes=100, front.svg, 100000",
    "memory=1000, front.png, 160000000",
    "elements=3, front.svg, 4",
    "depth=2, front.svg, 3",
    "uses=4, front.svg, 5",
    "characters=50, front.svg, 5000",
    "dashes=5, front.svg, 1000",
    "steps=20, front.svg, 100000",
    "memory=1000, front.svg, 1000000",
  })
  void aLimitIsNamedAndRaised(String limit, String file, long enough) throws IOException {
    String name = limit.substring(0, limit.indexOf('='));
    for (String command : new String[] {"fit", "pack", "probe", "prepare"}) {
      Run over = run(command, file, limit);
      assertEquals(2, over.code(), command + over.out() + over.err());
      assertTrue(over.err().contains(file), over.err());
      assertTrue(
          over.err().replaceAll("\\s+", " ").contains("raise the limit with --limit " + name + "="),
          command + over.err());
      assertFalse(Files.exists(dir.resolve("out")), command);
    }
    assertEquals(0, run("probe", file, name + "=" + enough).code());
    assertTrue(run("fit", file, name + "=" + enough).code() != 2);
  }

  @ParameterizedTest
  @ValueSource(strings = {"pixel=4", "pixels=0", "pixels=-1", "uses=99999999999"})
  void anUnknownLimitOrNumberIsRefused(String limit) throws IOException {
    for (String command : new String[] {"fit", "pack", "probe", "prepare"}) {
      Run run = run(command, "front.svg", limit);
      assertEquals(2, run.code(), run.err());
      assertTrue(run.err().contains("--limit " + limit), run.err());
    }
  }

  /** The option is described in the same words in the help of all three. */
  @Test
  void theHelpOfAllCommandsDescribesItAlike() {
    for (String command : new String[] {"fit", "probe", "prepare"}) {
      String help = Run.of(command, "--help").out().replaceAll("\\s+", " ");
      assertTrue(
          help.contains("--limit=NAME=NUMBER Sets a limit for reading one picture;"),
          command + help);
    }
  }
}
