package dev.placket.pictures.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.placket.pictures.svg.DrawnCase.Idle;
import dev.placket.pictures.svg.DrawnCase.Points;
import dev.placket.pictures.svg.DrawnCase.Same;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the cases expect, against librsvg, which shares no code with ours: it draws every case and
 * every expected drawing, all of them beside one another in one call each.
 */
class DrawnBySecondTest {
  private static final int COLUMNS = 40;
  private static final int ROOM = Shots.SIDE * Shots.ZOOM;

  /**
   * A gradient is another renderer's at another point of the pixel, and its colours are rounded.
   */
  private static final int LEVELS = 14;

  @TempDir Path work;

  @Test
  void librsvgSeesTheSame() throws Exception {
    List<DrawnCase> cases =
        DrawnCases.all().stream()
            .filter(c -> c.second().isEmpty() && !alone(c))
            .filter(
                c ->
                    c.check() instanceof Same
                        || c.check() instanceof Points
                        || c.check() instanceof Idle)
            .toList();
    List<Drawn> all = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (DrawnCase c : cases) {
      c.drawings().stream().filter(seen::add).forEach(d -> all.add(new Drawn(c, d)));
    }
    BufferedImage shown = drawn("shown", all.stream().map(Drawn::fragment).toList());
    BufferedImage plain = drawn("plain", all.stream().map(Drawn::expected).toList());
    List<String> faults = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      Drawn d = all.get(i);
      compare(d.of(), d.fragment(), room(shown, i), room(plain, i), faults);
    }
    assertEquals(List.of(), faults);
  }

  /** A fragment and the case that it is of. */
  private record Drawn(DrawnCase of, String fragment) {
    String expected() {
      return of.check() instanceof Same same
          ? same.fragment()
          : of.check() instanceof Idle ? of.without() : "";
    }
  }

  /** Sheets reach all drawings beside them, and text is set in what fonts the machine has. */
  private static boolean alone(DrawnCase c) {
    return c.template().contains("<style") || c.template().contains("<text");
  }

  private static void compare(
      DrawnCase c, String drawing, int[] shown, int[] plain, List<String> faults) {
    if (c.check() instanceof Points points) {
      Shots.Shot shot = new Shots.Shot(shown, List.of());
      for (DrawnCase.Point p : points.points()) {
        int found = shot.over(p.x(), p.y());
        if (Alike.difference(found | 0xff000000, p.rgb() | 0xff000000) > LEVELS) {
          faults.add(
              String.format("%n%s: #%06x at %s,%s: %s", c.title(), found, p.x(), p.y(), drawing));
        }
      }
    } else if (Alike.worst(shown, plain) > Alike.LEVELS) {
      faults.add("\n" + c.title() + ": " + Alike.where(shown, plain, ROOM) + ": " + drawing);
    }
  }

  private static int[] room(BufferedImage sheet, int i) {
    return sheet.getRGB(i % COLUMNS * ROOM, i / COLUMNS * ROOM, ROOM, ROOM, null, 0, ROOM);
  }

  /** All fragments beside one another, the ids of each its own. */
  private BufferedImage drawn(String name, List<String> fragments) throws Exception {
    int rows = (fragments.size() + COLUMNS - 1) / COLUMNS;
    StringBuilder sheet = new StringBuilder("<svg xmlns='http://www.w3.org/2000/svg' width='");
    sheet.append(COLUMNS * Shots.SIDE).append("' height='").append(rows * Shots.SIDE).append("'>");
    for (int i = 0; i < fragments.size(); i++) {
      sheet.append(
          String.format(
              "<svg x='%d' y='%d' width='40' height='40' viewBox='0 0 40 40'>%s</svg>",
              i % COLUMNS * Shots.SIDE, i / COLUMNS * Shots.SIDE, own(fragments.get(i), i)));
    }
    Path svg = Files.writeString(work.resolve(name + ".svg"), sheet.append("</svg>"));
    Path png = work.resolve(name + ".png");
    Process process;
    try {
      process =
          new ProcessBuilder(
                  "rsvg-convert",
                  "--accept-language=en",
                  "--zoom=" + Shots.ZOOM,
                  "--output=" + png,
                  svg.toString())
              .inheritIO()
              .start();
    } catch (IOException e) {
      Assumptions.abort("skipped: no rsvg-convert on this machine");
      throw e;
    }
    if (!process.waitFor(2, TimeUnit.MINUTES)) {
      process.destroyForcibly();
      throw new AssertionError("rsvg-convert takes more than two minutes");
    }
    assertEquals(0, process.exitValue());
    return ImageIO.read(png.toFile());
  }

  private static String own(String fragment, int i) {
    return fragment
        .replaceAll(" id='(\\w)'", " id='$1_" + i + "'")
        .replaceAll("([(='\"])#(\\w)(?=[)'\"])", "$1#$2_" + i);
  }
}
