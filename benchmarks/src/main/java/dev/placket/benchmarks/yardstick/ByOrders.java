package dev.placket.benchmarks.yardstick;

import dev.placket.benchmarks.pages.ReferencePage;

/**
 * A greedy rule with the best of the five usual orders.
 *
 * @param name what the tables call it
 * @param rule the rule
 */
record ByOrders(String name, Greedy rule) implements Yardstick {
  @Override
  public Packing pack(ReferencePage page) {
    ScaleSearch search = new ScaleSearch(page, rule);
    Orders.of(page).forEach(search::walk);
    return search.best();
  }
}
