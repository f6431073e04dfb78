/**
 * The solver: a request in, a fit or a conflict out. Not exported: programs call {@code plan}.
 *
 * <p>{@code Fitter} reads the request ({@code solve.model}), proves the largest common scale t
 * ({@code solve.search}), trades some of it for order where asked ({@code solve.order}), rounds
 * ({@code solve.finish}), enlarges views, details and swatches together as far as any arrangement
 * in that order allows ({@code solve.levels}), and then flat by flat in the relative order reached
 * ({@code solve.finish}). {@code Look} chooses between results of different order. A request that
 * has no arrangement goes to {@code solve.conflict}.
 *
 * <h2>Further sheets</h2>
 *
 * <p>{@code FurtherSheets}: a sheet still fits after a flat is taken off it. Filling each sheet as
 * far as possible therefore gives the fewest; {@code provenFewest} states that the refusals behind
 * that were proven. The first sheet may be ruled in several ways and further sheets in another.
 * {@code ShareSheets} then moves the breaks so that the smallest common scale is as large as
 * possible. Targets keep their meaning among all flats ({@code FlowTargets}), also where the front
 * is on another sheet. A scale group on several sheets has one scale: that of the tightest sheet,
 * or the one at which a flat of the group is fixed.
 */
@NullMarked
package dev.placket.layout.solve;

import org.jspecify.annotations.NullMarked;
