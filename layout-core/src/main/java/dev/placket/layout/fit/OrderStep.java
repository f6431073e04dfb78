package dev.placket.layout.fit;

/**
 * What became of one wish for order.
 *
 * @param wish the wish
 * @param kept whether the fit grants it
 * @param price the part of the largest known common scale given up for it, 0 where it came free or
 *     was not kept
 */
public record OrderStep(OrderWish wish, boolean kept, double price) {}
