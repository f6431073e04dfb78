/**
 * Issues of a style: folders that are written once, whole or not at all, and never again.
 *
 * <p>An issue's name is style, revision and date, as the description states them. Its manifest has
 * the digests of all that it was made from and of all that is in it; by their manifests, earlier
 * issues are found. The files are written into a folder beside the others under a name that nobody
 * can foresee, which is then renamed in one step.
 */
@NullMarked
package dev.placket.packs.issue;

import org.jspecify.annotations.NullMarked;
