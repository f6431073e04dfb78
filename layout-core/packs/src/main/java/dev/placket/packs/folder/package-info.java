/**
 * A folder of flats: what its names and notes state, and the built-in sheet for it.
 *
 * <p><b>The words of the built-in sheet adapt to any paper from A6 up.</b> The header keeps two
 * rows where all captions go in ({@code WideHeader}). Otherwise its values flow, blank ones are
 * left out and the rest is set small ({@code FlowedHeader}). Header and foot are laid before the
 * fit and do not depend on it. An upright sheet has the window of details below that of the views.
 *
 * <p><b>Outputs of earlier runs are not read as flats</b> ({@code OwnOutputs}): beside a {@code
 * fit.json}, the files named as a report page are skipped.
 */
@NullMarked
package dev.placket.packs.folder;

import org.jspecify.annotations.NullMarked;
