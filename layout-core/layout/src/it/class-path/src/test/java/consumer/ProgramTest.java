package consumer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.placket.layout.plan.Planner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The library on the class-path, with nothing beside it. */
class ProgramTest {
  @Test
  void solvesASheet() {
    // Side by side on 190 mm with 10 mm between them, each has 90 mm, 255.118 pt, for 100 units.
    double scale = Program.scale();
    assertEquals(2.55118, scale, 1e-4);
    System.out.println("front placed at scale " + scale + " on the class-path");
  }

  @Test
  void runsOnThePathItSays() {
    assertEquals(false, Planner.class.getModule().isNamed());
    assertEquals(false, Program.class.getModule().isNamed());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "org.apache.batik.bridge.BridgeContext",
        "com.twelvemonkeys.imageio.plugins.jpeg.JPEGImageReader",
        "org.apache.commons.imaging.Imaging"
      })
  void hasNoPictureLibrary(String name) {
    assertThrows(ClassNotFoundException.class, () -> Class.forName(name));
  }
}
