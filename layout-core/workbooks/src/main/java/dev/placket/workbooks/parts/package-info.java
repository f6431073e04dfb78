/** The package of a workbook: zip entries, parts, relations, content types; read with limits. */
@NullMarked
package dev.placket.workbooks.parts;

import org.jspecify.annotations.NullMarked;
