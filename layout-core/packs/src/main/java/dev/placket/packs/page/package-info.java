/** A page of a pack, written as PDF and as a preview picture. */
@NullMarked
package dev.placket.packs.page;

import org.jspecify.annotations.NullMarked;
