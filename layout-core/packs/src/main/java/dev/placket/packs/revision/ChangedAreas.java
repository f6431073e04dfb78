package dev.placket.packs.revision;

import dev.placket.layout.units.Rect;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import javax.imageio.ImageIO;
import javax.imageio.stream.MemoryCacheImageInputStream;

/**
 * Finds where two pictures of a sheet differ: boxes around pixels that changed, those that are near
 * one another in one box. O(n) for n pixels.
 */
public final class ChangedAreas {
  /** The side of the squares that are compared, in pixels. */
  private static final int TILE = 6;

  /** A level that differs by more is seen. */
  private static final int SEEN = 48;

  /** Squares so near one another, counted in squares, are one area. */
  private static final int NEAR = 3;

  private final int across;
  private final int down;
  private final boolean[] changed;

  private ChangedAreas(BufferedImage before, BufferedImage after) {
    this.across = (after.getWidth() + TILE - 1) / TILE;
    this.down = (after.getHeight() + TILE - 1) / TILE;
    this.changed = new boolean[across * down];
    for (int y = 0; y < after.getHeight(); y++) {
      for (int x = 0; x < after.getWidth(); x++) {
        if (differ(before.getRGB(x, y), after.getRGB(x, y))) {
          changed[y / TILE * across + x / TILE] = true;
        }
      }
    }
  }

  /**
   * The areas, in shares of width and height; none where the pictures are of different sizes.
   *
   * @param before a PNG
   * @param after another
   * @throws IOException if one cannot be read
   */
  public static List<Rect> of(byte[] before, byte[] after) throws IOException {
    BufferedImage old = image(before);
    BufferedImage now = image(after);
    if (old.getWidth() != now.getWidth() || old.getHeight() != now.getHeight()) {
      return List.of();
    }
    ChangedAreas areas = new ChangedAreas(old, now);
    double width = (double) now.getWidth() / TILE;
    double height = (double) now.getHeight() / TILE;
    List<Rect> boxes = new ArrayList<>();
    for (int i = 0; i < areas.changed.length; i++) {
      if (areas.changed[i]) {
        int[] b = areas.take(i);
        boxes.add(
            new Rect(
                b[0] / width,
                b[1] / height,
                Math.min(1, (b[2] + 1) / width),
                Math.min(1, (b[3] + 1) / height)));
      }
    }
    return boxes;
  }

  private static BufferedImage image(byte[] png) throws IOException {
    BufferedImage image =
        ImageIO.read(new MemoryCacheImageInputStream(new ByteArrayInputStream(png)));
    if (image == null) {
      throw new IOException("it is no PNG");
    }
    return image;
  }

  private static boolean differ(int a, int b) {
    for (int shift = 0; shift <= 16; shift += 8) {
      if (Math.abs((a >> shift & 255) - (b >> shift & 255)) > SEEN) {
        return true;
      }
    }
    return false;
  }

  /** Takes out all squares that hang together with one; left, top, right and bottom of them. */
  private int[] take(int first) {
    int[] box = {first % across, first / across, first % across, first / across};
    Deque<Integer> open = new ArrayDeque<>(List.of(first));
    changed[first] = false;
    while (!open.isEmpty()) {
      int at = open.pop();
      int x = at % across;
      int y = at / across;
      box[0] = Math.min(box[0], x);
      box[1] = Math.min(box[1], y);
      box[2] = Math.max(box[2], x);
      box[3] = Math.max(box[3], y);
      for (int ny = Math.max(0, y - NEAR); ny <= Math.min(down - 1, y + NEAR); ny++) {
        for (int nx = Math.max(0, x - NEAR); nx <= Math.min(across - 1, x + NEAR); nx++) {
          if (changed[ny * across + nx]) {
            changed[ny * across + nx] = false;
            open.push(ny * across + nx);
          }
        }
      }
    }
    return box;
  }
}
