/** Writes a page of a pack as PDF, and its preview. */
@NullMarked
package dev.placket.demo.pdf;

import org.jspecify.annotations.NullMarked;
