/** How the runnable jar starts: its classes are read in the shortest way. */
@NullMarked
package dev.placket.demo.start;

import org.jspecify.annotations.NullMarked;
