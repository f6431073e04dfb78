/**
 * The values of a fit: the request with its rules, wishes and budget, and the result, which is a
 * fit with its proof, or the conflict.
 *
 * <p>{@code plan} turns a request into a result. {@code PlacedBoxes} gives the exact rectangles of
 * a placement, {@code ConflictText} writes a conflict as a paragraph, millimetres rounded up.
 *
 * <ul>
 *   <li>Requests and fits are values without functions, so any engine can carry them. "It does not
 *       fit" is a value ({@code Conflict}); only programming errors throw. Cancelling is the one
 *       function, an argument of {@code Planner.plan}.
 *   <li>The common scale is the scale of the leading flat in points per drawing unit: of the front,
 *       else of the first view, else of the first flat. It is a number on paper, so two packs can
 *       be compared.
 *   <li>Budgets count steps. The result depends on the request alone: ties are broken by index, and
 *       neither hash order nor a clock takes part.
 * </ul>
 */
@NullMarked
package dev.placket.layout.fit;

import org.jspecify.annotations.NullMarked;
