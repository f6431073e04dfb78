/** The values of a pack, and the reader and writer of its description in YAML. */
@NullMarked
package dev.placket.packs.description;

import org.jspecify.annotations.NullMarked;
