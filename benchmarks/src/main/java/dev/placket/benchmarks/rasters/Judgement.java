package dev.placket.benchmarks.rasters;

import java.util.Locale;

/**
 * How our decoding of one file compares.
 *
 * @param file its name
 * @param verdict what it comes to
 * @param against the nearest second library, or nothing where none decodes the file
 * @param mean levels of 255 by which they differ
 * @param largest levels of 255 by which they differ in any channel of any pixel
 * @param words our notes, or our refusal
 */
record Judgement(
    String file, Verdict verdict, String against, double mean, int largest, String words) {
  /** What a comparison comes to. */
  enum Verdict {
    /** As a second library has it. */
    RIGHT,
    /** Otherwise than every second library that decodes it, and nothing was said. */
    WRONG,
    /** Otherwise, but with a note. */
    NOTED,
    /** Decoded here and by no second library. */
    ALONE,
    /** Refused with a reason. */
    REFUSED,
    /** Ended in anything but a refusal. */
    CRASHED
  }

  String line() {
    return String.format(
        Locale.ROOT, "%s\t%s\t%s\t%.2f\t%d\t%s", verdict, file, against, mean, largest, words);
  }
}
