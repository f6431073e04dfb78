/** The built-in flat sheet: its cells, its lettering, its windows. */
@NullMarked
package dev.placket.demo.sheet;

import org.jspecify.annotations.NullMarked;
