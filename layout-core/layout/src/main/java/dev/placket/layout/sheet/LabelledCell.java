package dev.placket.layout.sheet;

import dev.placket.layout.units.Rect;

/**
 * A rectangle that holds text and stays uncovered; labelled cells may overlap one another and may
 * lie inside a window.
 *
 * @param name what messages call it; unique among the sheet's labelled cells
 * @param box where it lies, in points on the sheet
 */
public record LabelledCell(String name, Rect box) {}
