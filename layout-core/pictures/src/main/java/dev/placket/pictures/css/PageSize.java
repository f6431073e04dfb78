package dev.placket.pictures.css;

/**
 * The size of what a drawing shows, in CSS pixels, for media queries and the units vw and vh.
 *
 * @param width above zero
 * @param height above zero
 */
public record PageSize(double width, double height) {}
