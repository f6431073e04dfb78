/**
 * Files that a run writes: their names, the claim on their folder, whole or not at all.
 *
 * <ul>
 *   <li><b>A run claims its folder by a lock of the operating system</b> ({@code Claim}, on {@code
 *       .placket-lock}), which ends with the process. A file whose presence means "in use" would
 *       outlive a killed run. Temporary names cannot be foreseen; under the claim, other temporary
 *       files are leftovers.
 *   <li><b>Without permission to overwrite, a file gets its name by a hard link</b> ({@code
 *       Staging}): the one step that fails if a file appeared meanwhile.
 *   <li><b>A run killed by force while it overwrites may leave files of two runs.</b> Each file is
 *       whole, and the next run deletes temporary files and backups, but several renames are not
 *       one step. {@code fit.json} is named last, so an old one beside newer files shows it. A run
 *       that ends in any other way restores what it replaced. A journal would help only a next run,
 *       which may never come.
 * </ul>
 */
@NullMarked
package dev.placket.packs.output;

import org.jspecify.annotations.NullMarked;
