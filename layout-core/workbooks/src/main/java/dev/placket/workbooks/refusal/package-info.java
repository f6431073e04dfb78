/** The settings of a run onto a workbook that a refusal names. */
@NullMarked
package dev.placket.workbooks.refusal;

import org.jspecify.annotations.NullMarked;
