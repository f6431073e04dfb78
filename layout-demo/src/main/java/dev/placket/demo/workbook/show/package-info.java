/** Shows what a worksheet was taken for: a preview picture, fields of fit.json, lines to read. */
@NullMarked
package dev.placket.demo.workbook.show;

import org.jspecify.annotations.NullMarked;
