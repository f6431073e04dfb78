/**
 * The report of a run, as text and as a page.
 *
 * <p><b>What is reported is one value</b> ({@code ReportContent}, from {@code Findings}): terminal
 * and page phrase it each in its own way and cannot differ. The page is HTML and a style sheet
 * without scripts; row and outline find each other by {@code :has()}. {@code ReportPageTest} views
 * it in Chromium at three widths, with axe-core from npm where {@code PLACKET_AXE} names its file,
 * as in {@code .ci/run}.
 *
 * <p><b>Next steps have one line per kind</b> ({@code StepKind}, in the order in which a sample is
 * spoiled), with the names of the worst four: a designer acts by kind, and each picture has its own
 * line in the report.
 *
 * <p><b>The report claims what the proof covers</b>: the common scale before growth, in the windows
 * as ruled.
 */
@NullMarked
package dev.placket.packs.report;

import org.jspecify.annotations.NullMarked;
