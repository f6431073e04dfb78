/**
 * Typefaces for the text of drawings: what is given, which face is set for a weight and style, and
 * which scripts can be set letter by letter.
 *
 * <ul>
 *   <li><b>Text is set in given typefaces or Liberation Sans</b> ({@code Typefaces}, OFL, a
 *       resource), never in a font of the machine, so bounds and look are the same everywhere. A
 *       note names what was requested and not given. Typefaces enter the document as the {@code
 *       font} elements of SVG 1.1 ({@code FontElements}, outlines by FontBox), because {@code
 *       Font.createFont} writes a temporary file. A character that no typeface has, and a script
 *       that needs shaping, are refused: they would come out wrong silently.
 *   <li>Typefaces are matched by weight and style (CSS Fonts 4, 5.2; {@code FaceMatching}) among
 *       those given. No bold is made by thickening; a missing one is noted. Kerning pairs come from
 *       the typeface ({@code PairKerning} for GPOS, FontBox for the older table) as {@code hkern};
 *       ligatures are not set.
 * </ul>
 */
@NullMarked
package dev.placket.pictures.typeface;

import org.jspecify.annotations.NullMarked;
