/**
 * Fonts for one drawing: which typeface its text asks for, written into the document as {@code
 * font} elements with the glyphs that it needs, and notes of what was requested and not given.
 */
@NullMarked
package dev.placket.pictures.svg.font;

import org.jspecify.annotations.NullMarked;
