package dev.placket.workbooks.parts;

/**
 * One relation of a part.
 *
 * @param id its name within the part
 * @param type the end of its type, as in {@code drawing}; the same in both conformance classes
 * @param target the part it leads to, without leading slash; as stated where it leads outside
 * @param external whether it leads outside the package
 */
public record Relation(String id, String type, String target, boolean external) {}
