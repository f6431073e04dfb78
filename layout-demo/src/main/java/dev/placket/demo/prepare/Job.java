package dev.placket.demo.prepare;

import dev.placket.layout.image.prepare.Clearing;
import dev.placket.layout.units.Length;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * One picture to make ready.
 *
 * @param file where it is
 * @param longest the printed length of the longer side of its ink
 * @param density the most pixels per printed inch
 * @param clearing what becomes of its ground
 * @param digest the SHA-256 that its bytes must have; null for any
 */
record Job(Path file, Length longest, double density, Clearing clearing, @Nullable String digest) {
  /** The name of the ready copy. */
  String output() {
    String name = file.getFileName().toString();
    int dot = name.lastIndexOf('.');
    return (dot > 0 ? name.substring(0, dot) : name) + ".png";
  }

  Job at(double other) {
    return new Job(file, longest, other, clearing, digest);
  }
}
