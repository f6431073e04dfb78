package dev.placket.pictures.css;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Custom properties of one element, and what {@code var()} stands for there (CSS Variables 1). */
final class Variables {
  private static final Pattern VAR = Pattern.compile("(?<![\\w-])var\\(", Pattern.CASE_INSENSITIVE);
  private static final Pattern NAME = Pattern.compile("--[\\w\\-\\x{80}-\\x{10ffff}]*");

  /** Properties that lean on one another further than this have no value. */
  private static final int DEEPEST = 100;

  private final Map<String, String> known;
  private final Map<String, String> own = new LinkedHashMap<>();
  private final Set<String> open = new HashSet<>();
  private final Set<String> circular = new HashSet<>();
  private final WorkBudget steps;

  private Variables(Map<String, String> known, WorkBudget steps) {
    this.known = known;
    this.steps = steps;
  }

  static boolean uses(String value) {
    return value.indexOf('(') >= 0 && VAR.matcher(value).find();
  }

  /**
   * The custom properties of an element, worked out.
   *
   * @param around those of the element around it
   * @param stated those that it states itself
   */
  static Map<String, String> resolved(
      Map<String, String> around, Map<String, String> stated, WorkBudget steps)
      throws TooManySteps {
    if (stated.isEmpty()) {
      return around;
    }
    Variables v = new Variables(new HashMap<>(around), steps);
    for (Map.Entry<String, String> e : stated.entrySet()) {
      switch (e.getValue().toLowerCase(Locale.ROOT)) {
        case "inherit", "unset", "revert", "revert-layer" -> {
          // As around it.
        }
        case "initial" -> v.known.remove(e.getKey());
        default -> v.own.put(e.getKey(), e.getValue());
      }
    }
    v.findCircles();
    v.own.keySet().forEach(v.known::remove);
    for (String name : List.copyOf(v.own.keySet())) {
      v.value(name, 0);
    }
    return v.known;
  }

  /** The value with what its variables stand for, or null if one of them stands for nothing. */
  static @Nullable String substituted(String value, Map<String, String> known, WorkBudget steps)
      throws TooManySteps {
    return new Variables(known, steps).substitute(value, 0);
  }

  private @Nullable String value(String name, int depth) throws TooManySteps {
    String stated = own.get(name);
    if (stated == null) {
      return known.get(name);
    }
    if (circular.contains(name) || depth > DEEPEST) {
      return null;
    }
    if (!known.containsKey(name)) {
      String value = substitute(stated, depth + 1);
      if (value != null) {
        known.put(name, value);
      }
    }
    return known.get(name);
  }

  private @Nullable String substitute(String value, int depth) throws TooManySteps {
    if (depth > DEEPEST) {
      return null;
    }
    steps.take(1 + value.length());
    StringBuilder out = new StringBuilder();
    int from = 0;
    int call = next(value, 0);
    while (call >= 0) {
      int close = Scan.closed(value, call + 3);
      String inside = value.substring(call + 4, close - 1);
      int comma = Scan.end(inside, 0, ",");
      String name = inside.substring(0, comma).strip();
      if (!NAME.matcher(name).matches()) {
        return null;
      }
      String stands = value(name, depth);
      if (stands == null && comma < inside.length()) {
        stands = substitute(inside.substring(comma + 1).strip(), depth + 1);
      }
      if (stands == null) {
        return null;
      }
      steps.take(stands.length());
      // A space, so that no two parts run together into another word.
      out.append(value, from, call).append(' ').append(stands).append(' ');
      from = close;
      call = next(value, from);
    }
    return out.append(value.substring(from)).toString().strip();
  }

  /** The next var() outside of strings and addresses, or -1. */
  private static int next(String value, int from) {
    Matcher m = VAR.matcher(value);
    for (int i = from; i < value.length(); i++) {
      char c = value.charAt(i);
      if (c == '"' || c == '\'') {
        i = Scan.stringEnd(value, i);
      } else if (c == 'v' || c == 'V') {
        if (m.region(i, value.length()).useTransparentBounds(true).lookingAt()) {
          return i;
        }
      } else if (value.regionMatches(true, i, "url(", 0, 4)) {
        i = Scan.closed(value, i + 3) - 1;
      }
    }
    return -1;
  }

  /** A property that leans on itself, by whatever way, has no value; nor do those on the way. */
  private void findCircles() throws TooManySteps {
    Map<String, Set<String>> leansOn = new HashMap<>();
    for (Map.Entry<String, String> e : own.entrySet()) {
      Set<String> names = new HashSet<>();
      Matcher m = NAME.matcher(e.getValue());
      while (uses(e.getValue()) && m.find()) {
        if (own.containsKey(m.group())) {
          names.add(m.group());
        }
      }
      steps.take(e.getValue().length());
      leansOn.put(e.getKey(), names);
    }
    for (String name : own.keySet()) {
      open.clear();
      if (!leansOn.getOrDefault(name, Set.of()).isEmpty() && reaches(name, name, leansOn)) {
        circular.add(name);
      }
    }
  }

  private boolean reaches(String from, String to, Map<String, Set<String>> leansOn)
      throws TooManySteps {
    Deque<String> todo = new ArrayDeque<>(Set.of(from));
    while (!todo.isEmpty()) {
      for (String next : leansOn.getOrDefault(todo.remove(), Set.of())) {
        steps.take(1);
        if (next.equals(to)) {
          return true;
        }
        if (open.add(next)) {
          todo.add(next);
        }
      }
    }
    return false;
  }
}
