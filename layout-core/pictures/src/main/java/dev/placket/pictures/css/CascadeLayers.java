package dev.placket.pictures.css;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The layers that sheets name, and which of them outweighs which (Cascade 5, clause 6.4). */
final class CascadeLayers {
  private final Map<String, Integer> met = new LinkedHashMap<>();

  /** The full name of a layer inside another; one without a name is one of its own. */
  String declare(String outer, String name) {
    String full = outer;
    for (String part : (name.isBlank() ? "(" + met.size() + ")" : name.strip()).split("\\.", 32)) {
      full = full.isEmpty() ? part : full + "." + part;
      met.putIfAbsent(full, met.size());
    }
    return full;
  }

  /** Ranks by name: of later layers higher; what is outside of inner layers outweighs them. */
  Map<String, Integer> ranks() {
    List<String> names = new ArrayList<>(met.keySet());
    names.add("");
    names.sort(Comparator.comparing(this::key));
    Map<String, Integer> ranks = new LinkedHashMap<>();
    names.forEach(name -> ranks.put(name, ranks.size()));
    return ranks;
  }

  /** A key that sorts as the layers do: the place of each part, and what has no more parts last. */
  private String key(String name) {
    StringBuilder key = new StringBuilder();
    for (int end = name.indexOf('.'); end >= 0; end = name.indexOf('.', end + 1)) {
      key.append(String.format("%09d", met.getOrDefault(name.substring(0, end), 0)));
    }
    if (!name.isEmpty()) {
      key.append(String.format("%09d", met.getOrDefault(name, 0)));
    }
    return key.append('~').toString();
  }
}
