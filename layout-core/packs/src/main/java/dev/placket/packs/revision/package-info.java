/**
 * Marks of a revision on the sheets: triangles with its code beside what it changed.
 *
 * <p>The place of a mark is searched for: first beside the new value, then elsewhere in its row or
 * cell, last in the margin at the same height. It is clear of text, rules, flats and other marks
 * ({@code PageInk}), or there is none and the report says so. Marks move nothing on the sheet.
 */
@NullMarked
package dev.placket.packs.revision;

import org.jspecify.annotations.NullMarked;
