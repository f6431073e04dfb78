/** What the revisions of a pack changed: the entries of its log, and the revision of each sheet. */
@NullMarked
package dev.placket.packs.history;

import org.jspecify.annotations.NullMarked;
