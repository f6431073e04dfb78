package dev.placket.pictures.prepare;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.placket.pictures.base.PictureException;
import java.awt.image.BufferedImage;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * The rows are what the JDK's own {@code BufferedImage.getRGB} says, also of a part of an image.
 */
class ImageRowsTest {
  private static final int WIDTH = 7;
  private static final int HEIGHT = 5;

  @Test
  void withAlpha() throws PictureException {
    check(image(BufferedImage.TYPE_INT_ARGB));
  }

  @Test
  void without() throws PictureException {
    check(image(BufferedImage.TYPE_INT_RGB));
  }

  @Test
  void aPartOfAnImage() throws PictureException {
    check(image(BufferedImage.TYPE_INT_ARGB).getSubimage(2, 1, 4, 3));
    check(image(BufferedImage.TYPE_INT_RGB).getSubimage(1, 2, 3, 3).getSubimage(1, 1, 2, 1));
  }

  @Test
  void otherTypesAreRefused() {
    BufferedImage other = new BufferedImage(1, 1, BufferedImage.TYPE_INT_ARGB_PRE);
    assertThrows(IllegalArgumentException.class, () -> new ImageRows(other));
  }

  private static BufferedImage image(int type) {
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, type);
    Random random = new Random(1);
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        image.setRGB(x, y, random.nextInt());
      }
    }
    return image;
  }

  private static void check(BufferedImage image) throws PictureException {
    int width = image.getWidth();
    int[] row = new int[width];
    try (PixelRows.Cursor rows = new ImageRows(image).open()) {
      for (int y = 0; y < image.getHeight(); y++) {
        rows.next(row);
        assertArrayEquals(image.getRGB(0, y, width, 1, null, 0, width), row);
      }
    }
  }
}
