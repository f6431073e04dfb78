package dev.placket.layout.fit;

import java.math.BigDecimal;

/**
 * Where one flat lands, exactly: its inked box runs from ({@code left}, {@code top}) over ink size
 * times {@code scale}.
 *
 * @param flat the flat's id
 * @param scale points per drawing unit, above zero; in a scale group the group's common scale times
 *     the ratio, exactly
 * @param left the left edge of the ink, in points from the sheet's left edge, to 1e-9
 * @param top the top edge of the ink, in points from the sheet's top edge, to 1e-9
 * @param capped whether the greatest size holds it under its target
 */
public record Placement(
    String flat, BigDecimal scale, BigDecimal left, BigDecimal top, boolean capped) {}
