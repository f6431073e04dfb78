package dev.placket.benchmarks.outside;

import java.util.Arrays;
import java.util.concurrent.Callable;

/** Median times of a piece of work that is warm. */
public final class Times {
  private static final int ROUNDS = 25;
  private static final int LONG_ROUNDS = 7;

  /** Keeps what was worked out, so that the work cannot be left out. */
  private static volatile int sink;

  private Times() {}

  /** Microseconds for one short piece of work, done so many times each round. */
  public static double median(int each, Callable<?> work) {
    return median(ROUNDS, each, work);
  }

  /** Microseconds for one long piece of work. */
  public static double ofLong(Callable<?> work) {
    return median(LONG_ROUNDS, 1, work);
  }

  private static double median(int rounds, int each, Callable<?> work) {
    double[] times = new double[rounds];
    // As many rounds again beforehand, for the compiler.
    for (int round = -rounds; round < rounds; round++) {
      long start = System.nanoTime();
      for (int i = 0; i < each; i++) {
        sink += once(work);
      }
      if (round >= 0) {
        times[round] = (System.nanoTime() - start) / 1e3 / each;
      }
    }
    Arrays.sort(times);
    return times[rounds / 2];
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
