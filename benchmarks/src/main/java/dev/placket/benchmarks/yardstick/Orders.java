package dev.placket.benchmarks.yardstick;

import dev.placket.benchmarks.pages.ReferencePage;
import dev.placket.benchmarks.pages.ReferencePage.Size;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** The five usual orders in which greedy rules take their pieces, the larger first. */
final class Orders {
  private static final List<ToDoubleFunction<Size>> KEYS =
      List.of(
          s -> s.width() * s.height(),
          Size::height,
          Size::width,
          s -> Math.max(s.width(), s.height()),
          s -> s.width() + s.height());

  private Orders() {}

  static List<int[]> of(ReferencePage page) {
    return KEYS.stream().map(k -> sorted(page, k)).toList();
  }

  private static int[] sorted(ReferencePage page, ToDoubleFunction<Size> key) {
    Comparator<Integer> larger =
        Comparator.comparingDouble((Integer i) -> key.applyAsDouble(page.flats().get(i)))
            .reversed();
    return IntStream.range(0, page.flats().size())
        .boxed()
        .sorted(larger.thenComparing(Comparator.naturalOrder()))
        .mapToInt(Integer::intValue)
        .toArray();
  }
}
