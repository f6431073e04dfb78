package dev.placket.packs.description;

import org.jspecify.annotations.Nullable;

/**
 * A material of a style, from cloth to bag.
 *
 * @param name what it is
 * @param shown the flat of the table's sheet that shows it; blank for none
 * @param supplier who sells it
 * @param reference the supplier's number for it; blank for none
 * @param composition what it is made of, and its weight or quality
 * @param width the usable width of cloth or tape
 * @param size the size of a trim
 * @param placement where it goes
 * @param consumption how much a garment takes: a number and its unit
 * @param waste whether waste is in it; null where it is counted, not measured
 * @param part the part of the colourways whose colours it has; blank for none
 */
public record PackMaterial(
    Words name,
    String shown,
    Words supplier,
    String reference,
    Words composition,
    Words width,
    Words size,
    Words placement,
    Words consumption,
    @Nullable Waste waste,
    String part) {
  /** Whether a consumption contains waste. */
  public enum Waste {
    /** It is what the factory orders for a garment. */
    INCLUDED,
    /** It is what ends up in a garment. */
    EXCLUDED
  }
}
