/**
 * Rewrites a document into forms that Batik draws as the standards say, before it is built.
 *
 * <p>Styles are expected in {@code style} and presentation attributes; style sheets are not read
 * here. Each class names the clause of the standard, and its test draws the same in plain forms.
 * {@code Rewritings} has the order.
 *
 * <p>Faulty values are drawn as SVG 2 says, with a note ({@code Repairs}: 4.2.1 and the clause of
 * each attribute): a refusal would cost more than a look at the drawing.
 */
@NullMarked
package dev.placket.pictures.svg.rewrite;

import org.jspecify.annotations.NullMarked;
