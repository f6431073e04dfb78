/**
 * The values of a pack, and the reader and writer of its description in YAML.
 *
 * <p><b>SnakeYAML's events are read, not Jackson's YAML layer.</b> Events keep every value as typed
 * (1.50, 007, yes) with its line and column, and aliases are refused before anything grows. {@code
 * YamlTree} makes nodes of them, {@code PackReader} and its helpers a {@code Pack} (values without
 * places). {@code Places} keeps where each part stands, and all faults are collected in one {@code
 * Faults}.
 *
 * <p><b>Identifiers are the keys of the description</b>: of sheets, flats, points and callouts.
 * What a revision removes is listed under {@code retired}, and using it again is a fault. Points
 * and callouts pass into {@code fit.json} with their positions; nothing draws them yet.
 *
 * <p><b>A description has either sheets or a {@code workbook}</b>, since a workbook is ruled
 * already. Paper is at most as large as a page of a PDF (ISO 32000-1, annex C.2; {@code
 * PaperChoice}).
 */
@NullMarked
package dev.placket.packs.description;

import org.jspecify.annotations.NullMarked;
