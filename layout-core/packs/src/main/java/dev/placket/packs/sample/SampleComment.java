package dev.placket.packs.sample;

/**
 * A numbered comment as it stands after the check of a sample.
 *
 * @param number by which it is known in all rounds
 * @param since the sample on which it was first made
 * @param point the code of its point of measure; empty for none
 * @param size the size that it was made on; empty for all
 * @param text what is said
 * @param action who acts on it; empty if not stated
 * @param open whether it is open still
 * @param carried whether it is open from earlier and this round says nothing of it
 */
public record SampleComment(
    int number,
    String since,
    String point,
    String size,
    String text,
    String action,
    boolean open,
    boolean carried) {}
