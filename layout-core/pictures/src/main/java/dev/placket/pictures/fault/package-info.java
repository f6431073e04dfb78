/** Texts of others in messages: on one line, without signs that steer a terminal. */
@NullMarked
package dev.placket.pictures.fault;

import org.jspecify.annotations.NullMarked;
