/**
 * The package of a workbook: zip entries, parts, relations, content types; read with limits.
 *
 * <p><b>A document type is refused in every part</b>, also in those that are only copied ({@code
 * DocumentTypes}): ISO/IEC 29500-2 forbids it, and the copy would pass it on. Only the text before
 * a root element is read for that. XML is walked without document types and entities, so nothing is
 * fetched or expanded.
 */
@NullMarked
package dev.placket.workbooks.parts;

import org.jspecify.annotations.NullMarked;
