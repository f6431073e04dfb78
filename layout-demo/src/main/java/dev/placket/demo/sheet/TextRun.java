package dev.placket.demo.sheet;

import dev.placket.layout.units.Length;

/**
 * One line of text where it stands on the sheet.
 *
 * @param text the line
 * @param left where it begins, in points from the sheet's left edge
 * @param baseline what it stands on, in points from the sheet's top edge
 * @param capitalHeight how high its capitals are
 */
public record TextRun(String text, double left, double baseline, Length capitalHeight) {}
