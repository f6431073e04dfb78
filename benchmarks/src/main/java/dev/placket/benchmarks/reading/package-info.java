/** Times of reading pictures, against libvips. */
@NullMarked
package dev.placket.benchmarks.reading;

import org.jspecify.annotations.NullMarked;
