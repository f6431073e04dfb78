/** What a pack holds, as values, and the reader and writer of its description in YAML. */
@NullMarked
package dev.placket.demo.description;

import org.jspecify.annotations.NullMarked;
