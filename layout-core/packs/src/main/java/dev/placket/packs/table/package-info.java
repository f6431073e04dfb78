/** Tables on a sheet: their values from a file, their columns, rows and pieces. */
@NullMarked
package dev.placket.packs.table;

import org.jspecify.annotations.NullMarked;
