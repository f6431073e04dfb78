package dev.placket.demo.prepare;

import dev.placket.layout.density.EffectiveDensity;
import dev.placket.layout.density.PixelSize;
import dev.placket.layout.image.PrintedDetail;
import org.jspecify.annotations.Nullable;

/**
 * What became of one picture.
 *
 * @param job what was asked
 * @param bytesBefore of the source
 * @param bytesAfter of the ready copy
 * @param before pixels of the source; null for a drawing
 * @param after pixels of the ready copy
 * @param density pixels per printed inch of the ready copy
 * @param cleared whether a white ground became transparent
 * @param printed the finest things of it as they print
 */
record Done(
    Job job,
    long bytesBefore,
    long bytesAfter,
    @Nullable PixelSize before,
    PixelSize after,
    EffectiveDensity density,
    boolean cleared,
    PrintedDetail printed) {}
