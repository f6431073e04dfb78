package dev.placket.layout.units;

/**
 * A spot in the plane; the type that holds it says in which unit.
 *
 * @param x to the right
 * @param y downwards
 */
public record PlanePoint(double x, double y) {}
