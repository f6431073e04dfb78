package dev.placket.demo.probe;

import dev.placket.pictures.base.PrintedDetail;
import org.jspecify.annotations.Nullable;

/**
 * What of a picture can be seen in print.
 *
 * @param printed its finest line, lettering and stitch gap at the printed size
 * @param resolvedShare the share of its pixel density that carries detail, above 0 and at most 1;
 *     null of a drawing
 */
record Detail(PrintedDetail printed, @Nullable Double resolvedShare) {}
