/** The command's answers to whole folders of drawings, judged by exit code, memory and time. */
@NullMarked
package dev.placket.benchmarks.drawings;

import org.jspecify.annotations.NullMarked;
