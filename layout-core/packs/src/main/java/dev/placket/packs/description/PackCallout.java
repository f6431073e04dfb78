package dev.placket.packs.description;

/**
 * A text tied to a spot of a flat.
 *
 * @param point a point of the flat, or an element of its drawing
 * @param text what it says; {@link Words#NONE} where the mark stands alone
 * @param mark what stands in a ring before the text, as a number; empty for none
 * @param detail the flat that shows the spot larger, which gets the mark into its caption; empty
 *     for none
 */
public record PackCallout(String point, Words text, String mark, String detail) {}
