/** The report of a run, as text and as a page. */
@NullMarked
package dev.placket.packs.report;

import org.jspecify.annotations.NullMarked;
