/** A refusal: why a run ends without a pack, as a value. */
@NullMarked
package dev.placket.packs.refusal;

import org.jspecify.annotations.NullMarked;
