/**
 * The languages of a pack: a glossary of the user, stock phrases, what is left untranslated.
 *
 * <p><b>A glossary is a table</b> (RFC 4180): its first line names languages (BCP 47), each further
 * line has one text in all of them. Spreadsheets read and write it, and one file serves all styles.
 *
 * <p><b>A text is looked up as it is written, with its fields in braces</b>, in the first column,
 * then in the others. Hence a pack may be written in any language of its glossary.
 *
 * <p><b>What has no translation is printed as written, once, and listed</b>: a blank would be
 * overlooked. Numbers, codes and units are not listed.
 *
 * <p><b>Stock phrases are from memory</b> ({@code stock-phrases.csv}, a glossary itself): no
 * standard names them in these languages. A line of the user's glossary replaces any of them.
 *
 * <p><b>Text keeps its language to the page by marks in it</b> ({@code LanguageMarks} of the
 * package of text), so that wrapping, shrinking and joining need not know of languages. What leaves
 * for messages, reports and {@code fit.json} is without them.
 */
@NullMarked
package dev.placket.packs.language;

import org.jspecify.annotations.NullMarked;
