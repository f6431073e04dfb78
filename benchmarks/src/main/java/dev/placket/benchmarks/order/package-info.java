/** Order before and after: garments with details, their measures and pictures. */
@org.jspecify.annotations.NullMarked
package dev.placket.benchmarks.order;
