/**
 * Pixels per inch and per metre, their states, and the pixels to ask for.
 *
 * <p>Values are kept as the file states them, as exact ratios ({@code Rate}): a conversion between
 * inches and metres would move a picture across the limit between two states.
 */
@NullMarked
package dev.placket.layout.density;

import org.jspecify.annotations.NullMarked;
