/**
 * Paths of drawings, to be measured along: lines, curves and parts of ellipses, whose lengths are
 * integrated numerically.
 */
@NullMarked
package dev.placket.pictures.path;

import org.jspecify.annotations.NullMarked;
