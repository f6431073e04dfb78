/**
 * What is to be placed: a flat, its role, natural size, limits, and how its scale hangs together
 * with others.
 */
@NullMarked
package dev.placket.layout.flat;

import org.jspecify.annotations.NullMarked;
