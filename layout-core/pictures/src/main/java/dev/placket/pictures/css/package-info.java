/**
 * Style sheets of drawings: the cascade for print, written into each element's own {@code style}.
 *
 * <p><b>They are applied before Batik sees a drawing</b>, because its CSS 2 engine drops every rule
 * after one that it does not know. This package knows nothing else of {@code pictures}.
 *
 * <p><b>The library parses selectors and media queries; sheets are cut here.</b> htmlunit-cssparser
 * is one jar of 220 KB with regular releases; ph-css brings eleven jars. Sheets are cut into rules
 * and declarations as CSS Syntax 3 requires ({@code Scan}, {@code Sheets}, {@code Block}), and the
 * parser receives one selector at a time: by itself it drops all declarations of a rule with one
 * fault, and it adds up the contents of {@code :not()} ({@code Specificity}).
 *
 * <ul>
 *   <li>A transparent paint becomes a gradient of one stop, since {@code fill-opacity} would be
 *       inherited without its colour ({@code SeeThroughPaints}).
 *   <li>Sizes and positions are properties ({@code Geometry}) and leave the cascade as attributes.
 *   <li>An element that parsing leaves out stays as an empty element until the style sheets are
 *       applied, so that {@code :nth-child()} counts right.
 *   <li>A style sheet or typeface outside the drawing is left out with a note. A picture or part
 *       outside it is refused.
 *   <li>{@code WorkBudget} limits the work.
 * </ul>
 */
@NullMarked
package dev.placket.pictures.css;

import org.jspecify.annotations.NullMarked;
