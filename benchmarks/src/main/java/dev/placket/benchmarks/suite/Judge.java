package dev.placket.benchmarks.suite;

import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.base.ViewBox;
import dev.placket.pictures.typeface.Typefaces;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;

/** Renders one drawing and holds it against its reference, or against the second renderer's. */
final class Judge {
  /** Across, for a drawing that has no reference picture. */
  private static final int WIDTH = 600;

  private final Path root;
  private final Typefaces typefaces;
  private final SecondRenderer second;

  Judge(Path root, Typefaces typefaces, SecondRenderer second) {
    this.root = root;
    this.typefaces = typefaces;
    this.second = second;
  }

  Judged judge(Path svg) throws IOException {
    Drawing drawing;
    try {
      drawing = (Drawing) PictureReader.read(PictureSource.of(svg), ReadLimits.DEFAULT, typefaces);
    } catch (PictureException e) {
      return judged(svg, Standing.REFUSED, 1, List.of(String.valueOf(e.getMessage())));
    }
    // Plain information excuses nothing.
    List<String> notes =
        drawing.notes().stream()
            .filter(PictureNote::changesPicture)
            .map(PictureNote::text)
            .toList();
    ViewBox v = drawing.viewBox();
    InkedBox all = new InkedBox(v.x(), v.y(), v.x() + v.width(), v.y() + v.height());
    BufferedImage reference = reference(svg);
    double wrong;
    if (reference != null) {
      BufferedImage ours = drawing.render(reference.getWidth(), reference.getHeight(), all);
      wrong = Likeness.wrong(ours, reference);
    } else {
      BufferedImage ours = drawing.render(WIDTH, all);
      BufferedImage theirs = second.render(svg, ours.getWidth(), ours.getHeight());
      if (theirs == null) {
        return judged(svg, Standing.OPEN, 1, notes);
      }
      wrong = Likeness.wrong(ours, theirs);
    }
    boolean noted = !notes.isEmpty();
    if (wrong <= Likeness.WRONG) {
      return judged(svg, atMost(wrong, noted), wrong, notes);
    }
    if (noted) {
      return judged(svg, Standing.NOTED, wrong, notes);
    }
    return judged(svg, agreed(svg, reference) ? Standing.SILENT : Standing.OPEN, wrong, List.of());
  }

  private static Standing atMost(double wrong, boolean noted) {
    return wrong <= Likeness.RIGHT
        ? noted ? Standing.RIGHT_NOTED : Standing.RIGHT
        : noted ? Standing.CLOSE_NOTED : Standing.CLOSE;
  }

  /** Whether the second renderer comes to the reference; without one it is the reference. */
  private boolean agreed(Path svg, @Nullable BufferedImage reference) throws IOException {
    if (reference == null) {
      return true;
    }
    BufferedImage other = second.render(svg, reference.getWidth(), reference.getHeight());
    return other != null && Likeness.wrong(other, reference) <= Likeness.WRONG;
  }

  private static @Nullable BufferedImage reference(Path svg) throws IOException {
    String name = svg.getFileName().toString();
    Path png = svg.resolveSibling(name.substring(0, name.length() - 4) + ".png");
    return Files.isRegularFile(png) ? ImageIO.read(png.toFile()) : null;
  }

  Judged crashed(Path svg, Throwable why) {
    return judged(svg, Standing.CRASHED, 1, List.of(why.toString()));
  }

  private Judged judged(Path svg, Standing standing, double wrong, List<String> said) {
    String file = root.relativize(svg).toString().replace('\\', '/');
    String line = String.join(" | ", said).replaceAll("\\s+", " ");
    return new Judged(file, standing, wrong, line);
  }
}
