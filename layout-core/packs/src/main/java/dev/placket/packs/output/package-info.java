/** Files that a run writes: their names, the claim on their folder, whole or not at all. */
@NullMarked
package dev.placket.packs.output;

import org.jspecify.annotations.NullMarked;
