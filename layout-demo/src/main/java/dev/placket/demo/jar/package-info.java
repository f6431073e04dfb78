/** Makes the runnable jar; used by the build alone. */
@NullMarked
package dev.placket.demo.jar;

import org.jspecify.annotations.NullMarked;
