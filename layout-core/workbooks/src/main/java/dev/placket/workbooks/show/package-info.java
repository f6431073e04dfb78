/** Shows how a worksheet was read: a preview picture, fields of fit.json, lines to read. */
@NullMarked
package dev.placket.workbooks.show;

import org.jspecify.annotations.NullMarked;
