package dev.placket.demo.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.module.ModuleFinder;
import java.lang.module.ModuleReader;
import java.lang.module.ModuleReference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A top-level type of main code has a simple name that is its own, in the project and in Java. */
class TypeNamesTest {
  private static final Path ROOT = Path.of("..");

  /** Modules whose types nobody here imports; {@code Role} is a word of the trade. */
  private static final Set<String> FAR = Set.of("java.management", "java.naming");

  @Test
  void noTwoTypesShareAName() throws IOException {
    Set<String> seen = new HashSet<>();
    Set<String> twice = new TreeSet<>();
    for (String name : ours()) {
      if (!seen.add(name)) {
        twice.add(name);
      }
    }
    assertTrue(seen.size() > 500, () -> "only " + seen.size() + " types found");
    assertEquals(Set.of(), twice);
  }

  @Test
  void noTypeHasTheNameOfAPublicTypeOfJava() throws IOException {
    Set<String> java = java();
    assertTrue(java.containsAll(Set.of("String", "Rectangle", "Document")), "Java was not read");
    Set<String> both = new TreeSet<>(ours());
    both.retainAll(java);
    assertEquals(Set.of(), both);
  }

  private static List<String> ours() throws IOException {
    try (Stream<Path> files = Files.walk(ROOT)) {
      return files
          .map(f -> ROOT.relativize(f).toString().replace('\\', '/'))
          .filter(f -> f.matches("(?:layout-core/\\w+|layout-demo|benchmarks)/src/main/java/.*"))
          .filter(f -> f.endsWith(".java") && !f.endsWith("-info.java"))
          .map(f -> f.substring(f.lastIndexOf('/') + 1, f.length() - ".java".length()))
          .toList();
    }
  }

  private static Set<String> java() {
    return ModuleFinder.ofSystem().findAll().stream()
        .filter(m -> m.descriptor().name().startsWith("java."))
        .filter(m -> !FAR.contains(m.descriptor().name()))
        .flatMap(m -> names(m).stream())
        .collect(Collectors.toSet());
  }

  private static Set<String> names(ModuleReference module) {
    Set<String> exported =
        module.descriptor().exports().stream()
            .filter(e -> !e.isQualified())
            .map(e -> e.source().replace('.', '/'))
            .collect(Collectors.toSet());
    try (ModuleReader reader = module.open();
        Stream<String> all = reader.list()) {
      return all.filter(n -> n.endsWith(".class") && !n.contains("$") && n.contains("/"))
          .filter(n -> exported.contains(n.substring(0, n.lastIndexOf('/'))))
          .map(n -> n.substring(n.lastIndexOf('/') + 1, n.length() - ".class".length()))
          .collect(Collectors.toSet());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
