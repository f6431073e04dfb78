/**
 * Forms of samples as workbooks to fill in.
 *
 * <p>A cell that is locked carries text, also where it looks like a number, so that no program
 * rounds or turns it. In lists in inches the cells to fill in are text, too: as a number, 7/16
 * would become a date. Each row carries a mark of what was sent ({@code SentRow}), by which a moved
 * or changed row is noticed when the workbook comes back. Protection keeps slips out, not intent:
 * it has no password.
 *
 * <p>fastexcel writes the workbook. It states the time of writing and the password of nobody, which
 * {@code Repacked} takes out: the same sample gives the same bytes.
 */
@NullMarked
package dev.placket.workbooks.form;

import org.jspecify.annotations.NullMarked;
