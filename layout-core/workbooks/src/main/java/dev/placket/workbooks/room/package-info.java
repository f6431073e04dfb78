/** The blank room of a worksheet's printed pages, as sheets that the solver knows. */
@NullMarked
package dev.placket.workbooks.room;

import org.jspecify.annotations.NullMarked;
