package dev.placket.layout.check;

/**
 * One hard rule that a fit breaks.
 *
 * @param rule which rule of the hard rules, as in {@code inside}, {@code clearance}, {@code gap}
 * @param message the flats or cells concerned and by how many points
 */
public record Breach(String rule, String message) {}
