package dev.placket.packs.description;

/**
 * A text tied to a spot of a flat.
 *
 * @param point a point of the flat, or an element of its drawing
 * @param text what it says
 */
public record PackCallout(String point, Words text) {}
