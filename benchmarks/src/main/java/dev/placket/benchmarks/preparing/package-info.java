/** Times and sizes of pictures made ready for print, against outside programs. */
@NullMarked
package dev.placket.benchmarks.preparing;

import org.jspecify.annotations.NullMarked;
