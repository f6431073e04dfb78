package dev.placket.demo.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.demo.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** DEVELOPERS.md and the package pages name what exists, and the map has every package. */
class DevelopersTest {
  private static final Path ROOT = Path.of("..");

  /** A class, with the package it is in or without. */
  private static final Pattern CLASS = Pattern.compile("(?:[a-z]+/)*([A-Z][a-z]+[A-Za-z]*)");

  /** In a package page: the first word of a code element that may be a class. */
  private static final Pattern NAMED =
      Pattern.compile("\\{@code\\s+([A-Z][a-z]+[A-Za-z]*)(?:\\.[A-Za-z]+)?\\s*}");

  /** Classes of the JDK that the package pages name. */
  private static final Set<String> OTHERS = Set.of("Font");

  private static List<Path> sources = List.of();
  private static Set<String> classes = Set.of();

  @BeforeAll
  static void list() throws IOException {
    List<Path> all = new ArrayList<>();
    for (String module :
        List.of(
            "layout-core/layout",
            "layout-core/pictures",
            "layout-core/packs",
            "layout-core/workbooks",
            "layout-demo",
            "benchmarks")) {
      try (Stream<Path> files = Files.walk(ROOT.resolve(module + "/src"))) {
        files.filter(f -> f.toString().endsWith(".java")).forEach(all::add);
      }
    }
    sources = all;
    classes = new HashSet<>();
    all.forEach(f -> classes.add(f.getFileName().toString().replace(".java", "")));
  }

  @Test
  void thePageIsShort() throws IOException {
    long bytes = Files.size(ROOT.resolve("DEVELOPERS.md"));
    assertTrue(bytes < 10_000, bytes + " bytes");
  }

  @Test
  void everyFileInThePageExists() throws IOException {
    Set<String> absent = new TreeSet<>();
    for (String code : code(Files.readString(ROOT.resolve("DEVELOPERS.md")))) {
      var named = CLASS.matcher(code);
      if (named.matches() && !exists(code, named.group(1))) {
        absent.add(code);
      }
      boolean path = code.matches("(README\\.md|pom\\.xml|\\.ci/run|(layout-|benchmarks/)[^ ]+)");
      if (path && !code.contains("target") && !Files.exists(ROOT.resolve(code))) {
        absent.add(code);
      }
    }
    assertEquals(Set.of(), absent);
  }

  @Test
  void theMapHasEveryPackage() throws IOException {
    String page = Files.readString(ROOT.resolve("DEVELOPERS.md"));
    String map = page.substring(page.indexOf("## Map"), page.indexOf("## Commands"));
    Set<String> onMap = new HashSet<>(code(map));
    Set<String> absent = new TreeSet<>();
    for (Path file : sources) {
      String at = file.toString().replace('\\', '/');
      if (at.endsWith("package-info.java") && at.contains("/src/main/java/")) {
        String in = at.replaceAll(".*/dev/placket/[a-z]+/|/?package-info.java", "");
        if (!in.isEmpty() && !onMap.contains(in)) {
          absent.add(at);
        }
      }
    }
    assertEquals(Set.of(), absent);
  }

  @Test
  void everyClassThatAPackagePageNamesExists() throws IOException {
    Set<String> absent = new TreeSet<>();
    for (Path file : sources) {
      if (file.endsWith("package-info.java")) {
        String text = Files.readString(file).replaceAll("\\n \\*", " ");
        var named = NAMED.matcher(text);
        while (named.find()) {
          String name = named.group(1);
          if (!classes.contains(name) && !OTHERS.contains(name)) {
            absent.add(file + ": " + name);
          }
        }
      }
    }
    assertEquals(Set.of(), absent);
  }

  /**
   * Options of the command in DEVELOPERS.md and the package pages; those of benchmarks left out.
   */
  @Test
  void everyOptionThatIsNamedExists() throws IOException {
    StringBuilder help = new StringBuilder("--steps\n");
    for (String command : List.of("fit", "probe", "prepare", "starter")) {
      help.append(Run.of(command, "--help").out());
    }
    List<Path> pages = new ArrayList<>(List.of(ROOT.resolve("DEVELOPERS.md")));
    sources.stream()
        .filter(f -> f.endsWith("package-info.java") && !f.toString().contains("benchmarks"))
        .forEach(pages::add);
    Set<String> absent = new TreeSet<>();
    for (Path page : pages) {
      var option = Pattern.compile("--[a-z][a-z-]+").matcher(Files.readString(page));
      while (option.find()) {
        if (!Pattern.compile(option.group() + "\\b").matcher(help).find()) {
          absent.add(page + ": " + option.group());
        }
      }
    }
    assertEquals(Set.of(), absent);
  }

  private static boolean exists(String code, String name) {
    String end = "/" + code + ".java";
    return code.equals(name)
        ? classes.contains(name)
        : sources.stream().anyMatch(f -> f.toString().replace('\\', '/').endsWith(end));
  }

  private static List<String> code(String text) {
    return Pattern.compile("`([^`\\n]+)`")
        .matcher(text)
        .results()
        .map(found -> found.group(1))
        .collect(Collectors.toList());
  }
}
