/** Leaders and their labels, given a fit. */
@NullMarked
package dev.placket.layout.callout;

import org.jspecify.annotations.NullMarked;
