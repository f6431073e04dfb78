package dev.placket.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
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

/** Where only the pixels of a picture leave no room, the message names them and the way out. */
class NoRoomByPixelsTest {
  private static final String DRAWING =
      "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 90 100'>"
          + "<rect x='10' y='10' width='70' height='80' fill='none' stroke='#000'/></svg>";

  @TempDir Path dir;
  private Path flats;

  @BeforeEach
  void folder() throws IOException {
    flats = Files.createDirectory(dir.resolve("style"));
    Files.writeString(flats.resolve("back.svg"), DRAWING);
    Files.writeString(flats.resolve("cuff-detail.svg"), DRAWING);
  }

  /** Lines along all four edges, so that all pixels are drawn on. */
  private void front(int width, int height) throws IOException {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, width, height);
    g.setColor(Color.BLACK);
    g.drawRect(0, 0, width - 1, height - 1);
    g.drawRect(1, 1, width - 3, height - 3);
    g.dispose();
    ImageIO.write(image, "png", flats.resolve("front.png").toFile());
  }

  private Run pack(String front, String back, Object... options) throws IOException {
    Path pack =
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
                  front: {file: front.png, role: front%s}
                  back: {file: back.svg, role: back%s}
            """
                .formatted(front, back));
    Object[] args = new Object[options.length + 3];
    args[0] = "fit";
    args[1] = pack;
    args[2] = "--overwrite";
    System.arraycopy(options, 0, args, 3, options.length);
    return Run.of(args);
  }

  private static String line(String said) {
    return said.replaceAll("\\s+", " ");
  }

  /**
   * No back is longer than the front, and 300 pixels at 150 to the inch, where a picture turns
   * soft, are 2 in.
   */
  @ParameterizedTest
  @CsvSource({"mm, 50.8 mm", "in, 2.00 in"})
  void aFrontOf250PixelsBesideABackOf60Millimetres(String units, String held) throws IOException {
    front(250, 300);
    Run none = pack("", ", least: 60mm", "--units", units);
    assertEquals(4, none.code(), none.out() + none.err());
    String way =
        "front.png: its 250 × 300 pixels limit it to "
            + held
            + "; export it with more pixels, or let it print blurred with --allow-soft.";
    assertTrue(line(none.err()).contains(way), none.err());
    assertFalse(Files.exists(flats.resolve("placket")));
  }

  @Test
  void eachWayOutThatTheMessageNamesIsOne() throws IOException {
    front(250, 300);
    assertEquals(4, pack("", ", least: 60mm").code());
    assertEquals(3, pack("", ", least: 60mm", "--allow-soft").code());
    front(500, 600);
    assertEquals(0, pack("", ", least: 60mm").code());
  }

  /** Three pixels fewer than 60 mm take at 150 to the inch, and as many as they take. */
  @Test
  void theLimitIsWhereThePicturePrintsCrisp() throws IOException {
    front(250, 352);
    assertTrue(pack("", ", least: 60mm").err().contains("250 × 352 pixels"));
    front(250, 355);
    assertEquals(0, pack("", ", least: 60mm").code());
  }

  /** A sheet of A4 is 297 mm long: a back of 400 mm has no room beside any front. */
  @Test
  void pixelsAreNotNamedWhereMoreOfThemWouldNotHelp() throws IOException {
    front(250, 300);
    Run none = pack("", ", least: 400mm");
    assertEquals(4, none.code(), none.out() + none.err());
    assertFalse(none.err().contains("pixels"), none.err());
  }

  /** Both are 150 mm wide and more at 180 mm long, and the sheet is 297 mm wide. */
  @Test
  void pixelsAreNotNamedWhereTheFrontTakesPartAndMoreWouldNotHelp() throws IOException {
    front(250, 300);
    Run none = pack(", least: 180mm", ", least: 180mm");
    assertEquals(4, none.code(), none.out() + none.err());
    assertTrue(none.err().contains("front"), none.err());
    assertFalse(none.err().contains("pixels"), none.err());
  }

  /** A stated least size of 55 mm is more than the 50.8 mm that its pixels give. */
  @Test
  void pixelsAreNamedWhereTheLeastSizeIsAlreadySoft() throws IOException {
    front(250, 300);
    Run none = pack(", least: 55mm", ", least: 60mm");
    assertEquals(4, none.code(), none.out() + none.err());
    assertTrue(line(none.err()).contains("250 × 300 pixels limit it to 55.0 mm"), none.err());
  }

  /** The description itself limits the front to less than its 300 pixels give. */
  @Test
  void pixelsAreNotNamedWhereTheDescriptionLimitsThePicture() throws IOException {
    front(250, 300);
    Run none = pack(", greatest: 45mm", ", least: 60mm");
    assertEquals(4, none.code(), none.out() + none.err());
    assertFalse(none.err().contains("pixels"), none.err());
  }

  /** In a folder all else is small enough to stand beside the front, however few its pixels are. */
  @ParameterizedTest
  @ValueSource(ints = {12, 40, 60, 100, 150, 250, 400})
  void aFolderIsPlacedBesideAFrontOfFewPixels(int width) throws IOException {
    front(width, width * 6 / 5);
    Run fit = Run.of("fit", flats);
    assertTrue(fit.code() == 0 || fit.code() == 3, fit.out() + fit.err());
    assertTrue(fit.out().contains("front.png at "), fit.out());
  }
}
