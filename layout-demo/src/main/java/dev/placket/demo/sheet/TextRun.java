package dev.placket.demo.sheet;

import dev.placket.layout.units.Length;

/**
 * One piece of text where it stands on the sheet, all of it in one typeface.
 *
 * @param text the piece
 * @param left where it begins, in points from the sheet's left edge
 * @param baseline what it stands on, in points from the sheet's top edge
 * @param capitalHeight how high its capitals are
 * @param face the typeface that has all its characters
 * @param strong whether its strokes are thickened
 */
public record TextRun(
    String text,
    double left,
    double baseline,
    Length capitalHeight,
    Typeface face,
    boolean strong) {}
