package dev.placket.house;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Packages use one another in one direction only, as the map of the module says. */
public abstract class CycleRules {
  /** The library under test. */
  protected abstract Library library();

  /**
   * Which packages of the library each may use, by their names below the root; the root itself is
   * an empty name.
   */
  protected abstract Map<String, Set<String>> mayUse();

  @Test
  void everyPackageIsOnTheMap() {
    Set<String> there = new TreeSet<>();
    for (JavaClass c : library().classes()) {
      there.add(name(c));
    }
    assertEquals(new TreeSet<>(mayUse().keySet()), there);
  }

  @Test
  void packagesUseWhatTheMapSays() {
    Map<String, Set<String>> used = new TreeMap<>();
    for (JavaClass c : library().classes()) {
      c.getDirectDependenciesFromSelf().stream()
          .map(d -> d.getTargetClass().getBaseComponentType())
          .filter(t -> t.getPackageName().startsWith(root()))
          .filter(t -> library().classes().contain(t.getName()))
          .filter(t -> !name(t).equals(name(c)) && !mayUse().get(name(c)).contains(name(t)))
          .forEach(
              t ->
                  used.computeIfAbsent(name(c) + " -> " + name(t), k -> new TreeSet<>())
                      .add(c.getSimpleName() + " uses " + t.getSimpleName()));
    }
    assertEquals(Map.of(), used);
  }

  @Test
  void noPackagesRunInACycle() {
    slices().matching("(**)").should().beFreeOfCycles().check(library().classes());
  }

  @Test
  void theMapHasNoCycle() {
    Set<String> free = new TreeSet<>();
    while (free.size() < mayUse().size()) {
      int before = free.size();
      mayUse().forEach((name, uses) -> addIf(free, name, free.containsAll(uses)));
      assertTrue(free.size() > before, () -> "no order in " + mayUse());
    }
  }

  private static void addIf(Set<String> names, String name, boolean free) {
    if (free) {
      names.add(name);
    }
  }

  private String root() {
    return library().root().substring(0, library().root().length() - 1);
  }

  private String name(JavaClass c) {
    String full = c.getPackageName();
    return full.length() <= root().length() ? "" : full.substring(root().length() + 1);
  }
}
