package dev.placket.workbooks.run;

import dev.placket.packs.refusal.Refusal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Does the same to many things, on as many processors as there are; the order is kept. */
final class Together {
  private Together() {}

  /** What is done to one thing. */
  @FunctionalInterface
  interface Step<A, B> {
    /** Does it. */
    B of(A thing) throws Refusal;
  }

  private record Attempt<B>(@Nullable B value, @Nullable Refusal refusal) {}

  /**
   * The results in the order of the things.
   *
   * @throws Refusal the first in that order, whichever came first in time
   */
  static <A, B> List<B> map(List<A> things, Step<A, B> step) throws Refusal {
    List<Attempt<B>> all = things.parallelStream().map(t -> done(t, step)).toList();
    List<B> values = new ArrayList<>();
    for (Attempt<B> one : all) {
      Refusal refusal = one.refusal();
      if (refusal != null) {
        throw refusal;
      }
      B value = one.value();
      if (value != null) {
        values.add(value);
      }
    }
    return values;
  }

  private static <A, B> Attempt<B> done(A thing, Step<A, B> step) {
    try {
      return new Attempt<>(step.of(thing), null);
    } catch (Refusal e) {
      return new Attempt<>(null, e);
    }
  }
}
