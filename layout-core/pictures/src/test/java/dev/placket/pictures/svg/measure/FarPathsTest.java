package dev.placket.pictures.svg.measure;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Lines that end far beyond the view. Measured with poppler 22.12: a line of a million sides of the
 * view is drawn, one of ten million is not.
 */
class FarPathsTest {
  @TempDir private Path dir;

  private void read(String path) throws IOException, PictureException {
    Path file =
        Files.writeString(
            dir.resolve("front.svg"),
            "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 80' fill='none'"
                + " stroke='#000'><path d='M10 10H90V70H10Z'/>"
                + path
                + "</svg>");
    PictureReader.read(PictureSource.of(file), ReadLimits.DEFAULT);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<path d='M20 20L1e300 50'/>",
        "<path d='M20 20L2e8 50'/>",
        "<path d='M20 20C-2e8 20 30 30 50 50'/>",
        "<line x1='5' y1='5' x2='5' y2='-3e9'/>",
        "<g transform='scale(1e6)'><path d='M0 0L5e2 1'/></g>"
      })
  void areRefusedByName(String path) {
    PictureException e = assertThrows(PictureException.class, () -> read(path));
    assertTrue(e.toString().contains("far beyond the view"), e.toString());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<path d='M20 20L9e7 50'/>",
        "<g transform='scale(1e-6)'><path d='M0 0L5e7 5e7'/></g>",
        "<path d='M20 20L1e300 50' display='none'/>"
      })
  void whatIsDrawnIsTaken(String path) {
    assertDoesNotThrow(() -> read(path));
  }
}
