package dev.placket.layout.fit;

/**
 * What became of one wish for order.
 *
 * @param wish the wish
 * @param kept whether the fit grants it
 * @param price the part of the largest known common scale given up for it, 0 where it came free;
 *     where it is not kept, what was given up to come near it
 */
public record OrderStep(OrderWish wish, boolean kept, double price) {}
