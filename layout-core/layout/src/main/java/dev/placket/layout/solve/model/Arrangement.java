package dev.placket.layout.solve.model;

/**
 * Anchors of all flats at a common scale, under some plan.
 *
 * @param t the common scale
 * @param x of each anchor, in points
 * @param y of each anchor, in points
 */
public record Arrangement(double t, double[] x, double[] y) {}
