/**
 * Brings a document into forms that Batik draws as the standards say, before it is built. Styles
 * are expected in {@code style} and presentation attributes; style sheets are not read here.
 */
@NullMarked
package dev.placket.pictures.svg.rewrite;

import org.jspecify.annotations.NullMarked;
