/**
 * Why nothing fits: the demands in conflict, and the smallest change that cures each.
 *
 * <p>{@code ExplainConflict} finds the preferred minimal conflict ({@code PreferredConflict}, after
 * Junker 2004) among the {@code Demands}. Then it tries every cure ({@code Cures} for demands,
 * {@code SheetCures} for cells and margins) in the unit of that cure and halves the amount from
 * above. The amount stated therefore always cures, and nine tenths of it does not. {@code
 * provenMinimal} is true only if every check behind the conflict was complete. {@code mvn test
 * -Dtest=ConflictTest -Dplacket.conflicts=1000} checks a thousand seeded sheets instead of a
 * hundred.
 */
@NullMarked
package dev.placket.layout.solve.conflict;

import org.jspecify.annotations.NullMarked;
