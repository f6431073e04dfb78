package dev.placket.layout.check;

import java.util.ArrayList;
import java.util.List;

/** Gathers breaches in the order in which they are found; lives inside one check. */
final class Breaches {
  private final List<Breach> found = new ArrayList<>();

  void add(String rule, String message) {
    found.add(new Breach(rule, message));
  }

  List<Breach> all() {
    return List.copyOf(found);
  }
}
