package dev.placket.demo.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.placket.layout.units.Rect;
import dev.placket.packs.revision.ChangedAreas;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** Boxes around what differs between two pictures; expected values by hand, squares of 6 pixels. */
class ChangedAreasTest {
  private static final int WIDTH = 120;
  private static final int HEIGHT = 60;

  private static byte[] png(int width, int height, int[]... boxes) throws IOException {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, width, height);
    g.setColor(Color.BLACK);
    for (int[] b : boxes) {
      g.fillRect(b[0], b[1], b[2], b[3]);
    }
    g.dispose();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageIO.write(image, "png", bytes);
    return bytes.toByteArray();
  }

  private static byte[] sheet(int[]... boxes) throws IOException {
    return png(WIDTH, HEIGHT, boxes);
  }

  private static Rect box(double left, double top, double right, double bottom) {
    return new Rect(left / WIDTH, top / HEIGHT, right / WIDTH, bottom / HEIGHT);
  }

  @Test
  void nothingDiffersFromItself() throws IOException {
    byte[] same = sheet(new int[] {10, 10, 20, 20});
    assertEquals(List.of(), ChangedAreas.of(same, same));
  }

  /** Pixels 31 to 40 lie in the squares from 30 to 42, 19 to 24 in those from 18 to 30. */
  @Test
  void addedAndRemovedInkLiesInABox() throws IOException {
    byte[] blank = sheet();
    byte[] inked = sheet(new int[] {31, 19, 10, 6});
    assertEquals(List.of(box(30, 18, 42, 30)), ChangedAreas.of(blank, inked));
    assertEquals(List.of(box(30, 18, 42, 30)), ChangedAreas.of(inked, blank));
  }

  /** Two changes 6 pixels apart are one area, 40 pixels apart two. */
  @Test
  void nearChangesShareABox() throws IOException {
    byte[] blank = sheet();
    assertEquals(
        List.of(box(0, 0, 18, 6)),
        ChangedAreas.of(blank, sheet(new int[] {0, 0, 6, 6}, new int[] {12, 0, 6, 6})));
    assertEquals(
        2, ChangedAreas.of(blank, sheet(new int[] {0, 0, 6, 6}, new int[] {46, 0, 6, 6})).size());
  }

  @Test
  void picturesOfOtherSizesAreNotCompared() throws IOException {
    assertEquals(List.of(), ChangedAreas.of(png(120, 60), png(60, 120, new int[] {0, 0, 9, 9})));
  }

  @Test
  void whatIsNoPictureIsSaid() throws IOException {
    byte[] sheet = sheet();
    assertThrows(IOException.class, () -> ChangedAreas.of(new byte[] {1, 2, 3}, sheet));
  }
}
