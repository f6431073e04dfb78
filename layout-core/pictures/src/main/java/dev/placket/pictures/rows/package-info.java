/**
 * Rows of pixels on their way from a decoder: stored, turned upright, squared. Each reader takes
 * rows from another; only a picture that is turned stands in memory as a whole.
 */
@NullMarked
package dev.placket.pictures.rows;

import org.jspecify.annotations.NullMarked;
