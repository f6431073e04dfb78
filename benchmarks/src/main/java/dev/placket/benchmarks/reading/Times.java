package dev.placket.benchmarks.reading;

import java.util.Arrays;
import java.util.concurrent.Callable;

/** Median times of a piece of work that is warm. */
final class Times {
  private static final int ROUNDS = 25;

  /** Keeps what was worked out, so that the work cannot be left out. */
  private static volatile int sink;

  private Times() {}

  /** Microseconds for one piece of work. */
  static double median(int each, Callable<?> work) {
    double[] times = new double[ROUNDS];
    // As many rounds again beforehand, for the compiler.
    for (int round = -ROUNDS; round < ROUNDS; round++) {
      long start = System.nanoTime();
      for (int i = 0; i < each; i++) {
        sink += once(work);
      }
      if (round >= 0) {
        times[round] = (System.nanoTime() - start) / 1e3 / each;
      }
    }
    Arrays.sort(times);
    return times[ROUNDS / 2];
  }

  private static int once(Callable<?> work) {
    try {
      Object result = work.call();
      return result == null ? 0 : result.hashCode();
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }
}
