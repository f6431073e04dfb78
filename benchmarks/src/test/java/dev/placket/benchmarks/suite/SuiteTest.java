package dev.placket.benchmarks.suite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Expected values are counted by hand, in pictures of 20 by 20 pixels. */
class SuiteTest {
  private static final String LEFT_HALF =
      "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 20 20'>"
          + "<rect width='10' height='20' fill='#000'/></svg>";

  @TempDir Path folder;

  @Test
  void pixelsBesideAnEdgeAreForgivenAndOthersAreNot() {
    BufferedImage ten = half(10);
    // One column further: its neighbours in the other picture are black as well as clear.
    assertEquals(0, Likeness.wrong(ten, half(11)));
    // Three columns further: column 11 and 12 have clear ones alone beside them, 10 the edge; seen
    // from the other side, the columns 10 and 11 have black ones alone.
    assertEquals(3 / 20.0, Likeness.wrong(ten, half(13)), 1e-12);
  }

  @Test
  void eachDrawingIsJudgedByItself() throws Exception {
    put("a-right", LEFT_HALF, half(10));
    put("b-wrong", LEFT_HALF, half(15));
    put("c-refused", "<svg xmlns='http://www.w3.org/2000/svg'/>", half(10));
    List<Judged> all = new Suite(folder, null, "no-such-program", folder).judge();
    assertEquals(
        List.of(Standing.RIGHT, Standing.OPEN, Standing.REFUSED),
        all.stream().map(Judged::standing).toList());
  }

  @Test
  void anExceptionHasAReason() throws Exception {
    Path list = folder.resolve("list.txt");
    Files.writeString(list, "# what differs\n\na/b.svg\tthe two specifications differ\n");
    assertEquals(Map.of("a/b.svg", "the two specifications differ"), Exceptions.read(list));
    Files.writeString(list, "a/b.svg\n");
    assertThrows(IllegalArgumentException.class, () -> Exceptions.read(list));
  }

  private void put(String name, String svg, BufferedImage reference) throws Exception {
    Files.writeString(folder.resolve(name + ".svg"), svg);
    ImageIO.write(reference, "png", folder.resolve(name + ".png").toFile());
  }

  private static BufferedImage half(int columns) {
    BufferedImage image = new BufferedImage(20, 20, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.BLACK);
    g.fillRect(0, 0, columns, 20);
    g.dispose();
    return image;
  }
}
