/**
 * Flats onto the ruled worksheets of a workbook that is there already (ISO/IEC 29500): everything
 * but the pictures stays as it was.
 */
@NullMarked
package dev.placket.demo.workbook;

import org.jspecify.annotations.NullMarked;
