/** A refusal: why a run ends without a pack, as a list of faults and the settings they name. */
@NullMarked
package dev.placket.packs.refusal;

import org.jspecify.annotations.NullMarked;
