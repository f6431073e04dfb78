/** What a run leaves behind: fit.json, the report, whole files. */
@NullMarked
package dev.placket.demo.result;

import org.jspecify.annotations.NullMarked;
