package dev.placket.benchmarks.yardstick;

import dev.placket.benchmarks.pages.ReferencePage;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Bottom-left (on a page: top-left) with random orders, the best of them.
 *
 * @param tries how many orders
 * @param seed of the orders
 */
public record RandomBottomLeft(int tries, long seed) implements Yardstick {
  @Override
  public String name() {
    return "bottom-left x" + tries;
  }

  @Override
  public Packing pack(ReferencePage page) {
    Random random = new Random(seed);
    ScaleSearch search = new ScaleSearch(page, new TopLeft());
    int[] order = IntStream.range(0, page.flats().size()).toArray();
    for (int i = 0; i < tries; i++) {
      shuffle(order, random);
      search.rise(order);
    }
    return search.best();
  }

  private static void shuffle(int[] order, Random random) {
    for (int i = order.length - 1; i > 0; i--) {
      int j = random.nextInt(i + 1);
      int kept = order[i];
      order[i] = order[j];
      order[j] = kept;
    }
  }
}
