/**
 * Which parts of SVG are drawn right, as data ({@code drawn.tsv}), and the audit of a drawing
 * against it.
 *
 * <p>The list has element × property × class of value, with clause and reason. Whatever is on no
 * list gets a note: a page that is wrong without a word costs a sample. A feature that becomes
 * right moves from a note to {@code right}.
 *
 * <p>Each line has cases ({@code cases/*.txt} beside {@code DrawnListTest}): a small drawing and
 * one of plain paths that must look the same, worked out by hand from the clause, or a note that
 * must appear. A line, word or class of value without a case fails ({@code DrawnListCoverTest}).
 * {@code DrawnBySecondTest} has librsvg draw all cases, which checks the expectations themselves;
 * exceptions stand beside their case. In CI the benchmark {@code suite} compares whole drawings
 * with librsvg: a silent difference fails unless {@code benchmarks/suite-exceptions.tsv} gives its
 * reason.
 */
@NullMarked
package dev.placket.pictures.svg;

import org.jspecify.annotations.NullMarked;
