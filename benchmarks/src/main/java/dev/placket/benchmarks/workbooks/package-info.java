/** Placing flats onto a folder of workbooks, judged by a second library and by bytes. */
@NullMarked
package dev.placket.benchmarks.workbooks;

import org.jspecify.annotations.NullMarked;
