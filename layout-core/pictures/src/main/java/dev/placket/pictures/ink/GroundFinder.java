package dev.placket.pictures.ink;

import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.base.Ground;
import dev.placket.pictures.rows.Pixels;
import org.jspecify.annotations.Nullable;

/** Tells the ground of a picture in memory from its border, and ink from ground. */
public final class GroundFinder {
  private final Pixels pixels;
  private final GroundLook look;

  /** Finds the ground of these pixels, by a tolerance in levels of 255. */
  public GroundFinder(Pixels pixels, int tolerance) {
    this.pixels = pixels;
    this.look =
        GroundJudge.judge(
            d -> Rings.ring(pixels, d), Rings.depth(pixels.width(), pixels.height()), tolerance);
  }

  GroundLook look() {
    return look;
  }

  Ground ground() {
    return look.ground();
  }

  /** The colour of the ground: red, green, blue. */
  int[] colour() {
    return look.colour();
  }

  /** Whether a pixel is part of the ground rather than ink. */
  boolean isGround(int p) {
    return look.isGround(p);
  }

  /** The box of all ink in pixels, or null if there is none. O(pixels). */
  public @Nullable InkedBox box() {
    return new InkScan(look, pixels.width()).box(pixels, 0, 0, pixels.width(), pixels.height());
  }
}
