/**
 * Writes a copy of a workbook that differs in its pictures alone.
 *
 * <p><b>Parts are spliced as text</b> ({@code Splice}), not generated from a model: everything else
 * keeps its bytes. Pictures are stored under the digest of their bytes, hence once. Entries of the
 * copy have no date, because a date depends on the time zone and some writers state none.
 *
 * <p>Tests build workbooks with a second library (POI, for tests alone), validate what is written
 * against the schemas of ECMA-376 and recompute every rectangle from the raw XML ({@code
 * RawWorkbook}, which shares no code with this module).
 */
@NullMarked
package dev.placket.workbooks.write;

import org.jspecify.annotations.NullMarked;
