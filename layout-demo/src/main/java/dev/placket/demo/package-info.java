/**
 * The command {@code placket}: options, messages and exit codes over the libraries.
 *
 * <p>A reader that closes standard output after the pipe took the report is not noticed ({@code fit
 * … | head -1}), since every write succeeded. One that closed it before makes the run end with 2.
 */
@NullMarked
package dev.placket.demo;

import org.jspecify.annotations.NullMarked;
