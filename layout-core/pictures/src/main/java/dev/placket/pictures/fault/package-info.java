/**
 * What is at fault in a file or a call, as a value for every library above this one.
 *
 * <ul>
 *   <li><b>A fault has parts, not a sentence</b> ({@code Fault}): its kind, the file as the caller
 *       named it, the place in it, what was found, what was expected, the remedies. The message is
 *       composed in one place, {@code Fault.message}, and stays on one line whatever names it
 *       quotes ({@code Visible}).
 *   <li><b>A remedy names a setting, never how a caller sets it</b> ({@code Setting}, {@code
 *       Remedy}). A program with a command line, a form or a file of settings supplies its own
 *       words for them ({@code SettingNames}).
 * </ul>
 */
@NullMarked
package dev.placket.pictures.fault;

import org.jspecify.annotations.NullMarked;
