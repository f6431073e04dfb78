package dev.placket.pictures;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.base.ViewBox;
import dev.placket.pictures.ink.GroundFinder;
import dev.placket.pictures.rows.Pixels;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Twenty real garment drawings; expected boxes were measured by an independent renderer. */
class FlatsTest {
  @Test
  void inkedBoxesAgreeWithTheManifest() throws Exception {
    Path folder = Flats.folder();
    List<String> lines = Files.readAllLines(folder.resolve("manifest.csv"));
    assertEquals(21, lines.size());
    for (String line : lines.subList(1, lines.size())) {
      String[] f = line.split(",", -1);
      Drawing d =
          (Drawing) PictureReader.read(PictureSource.of(folder.resolve(f[0])), ReadLimits.DEFAULT);
      double left = Double.parseDouble(f[9]);
      double top = Double.parseDouble(f[10]);
      double width = Double.parseDouble(f[11]);
      double height = Double.parseDouble(f[12]);
      double slack = 0.002 * Math.max(width, height);
      InkedBox b = d.inkedBox();
      assertEquals(left, b.left(), slack, f[0] + " left " + b);
      assertEquals(top, b.top(), slack, f[0] + " top " + b);
      assertEquals(left + width, b.right(), slack, f[0] + " right " + b);
      assertEquals(top + height, b.bottom(), slack, f[0] + " bottom " + b);
      assertEquals(Double.parseDouble(f[3]), d.viewBox().x(), f[0]);
      assertEquals(Double.parseDouble(f[5]), d.viewBox().width(), f[0]);
    }
  }

  @Test
  void pixelsAgreeWithGeometry() throws Exception {
    Path folder = Flats.folder();
    for (String name : List.of("carlton-front.svg", "jane-back.svg", "huey-front.svg")) {
      Drawing d =
          (Drawing) PictureReader.read(PictureSource.of(folder.resolve(name)), ReadLimits.DEFAULT);
      ViewBox v = d.viewBox();
      InkedBox all = new InkedBox(v.x(), v.y(), v.x() + v.width(), v.y() + v.height());
      BufferedImage image = d.render(1000, all);
      int[] argb = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, 1000);
      InkedBox seen =
          requireNonNull(
              new GroundFinder(new Pixels(image.getWidth(), image.getHeight(), argb), 0).box());
      double scale = 1000 / v.width();
      InkedBox b = d.inkedBox();
      assertEquals((b.left() - v.x()) * scale, seen.left(), 1.01, name);
      assertEquals((b.top() - v.y()) * scale, seen.top(), 1.01, name);
      assertEquals((b.right() - v.x()) * scale, seen.right(), 1.01, name);
      assertEquals((b.bottom() - v.y()) * scale, seen.bottom(), 1.01, name);
    }
  }
}
