package dev.placket.layout.fit;

import java.math.BigDecimal;

/**
 * One sheet of several: "number of count" stands on it.
 *
 * @param number from 1 on
 * @param count how many there are
 * @param request the sheet with the flats on it; targets are as on the first sheet
 * @param fit where they lie; its common scale is that of the leading flat among them
 * @param scale that common scale in terms of the leading flat of all sheets, by which sheets can be
 *     compared
 */
public record FlowSheet(int number, int count, FitRequest request, Fit fit, BigDecimal scale) {}
