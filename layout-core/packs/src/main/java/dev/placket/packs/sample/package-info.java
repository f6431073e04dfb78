/**
 * Sample checks: what was measured on a sample, judged against what was asked.
 *
 * <p>A sample is judged against its own size, and against values and tolerances as they stood in
 * its round: those of the list, unless earlier ones are given. The difference is measured less
 * asked. A value that meets a limit exactly is within it. Values are exact decimals in millimetres,
 * so that centimetres and inches give the same verdicts; they are rounded only when they are shown,
 * and never so that a value looks in where it is out, or out where it is in. Our own value counts
 * before the factory's.
 *
 * <p>A comment has a number in all rounds: it is made in one, and open ones are carried over until
 * one closes them. What was asked in a round can be known only from its rows or from the list as it
 * is: {@code compose/StaleValues} refuses rows that the list has overtaken, and {@code
 * compose/Revision} writes what was asked into them before it changes the list.
 *
 * <p>A verdict says nothing of the fit or of the safety of a garment: measures come from the
 * measured table, and approval is the buyer's. That the difference is signed and that limits count
 * as within is common practice.
 */
@NullMarked
package dev.placket.packs.sample;

import org.jspecify.annotations.NullMarked;
