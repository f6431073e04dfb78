package dev.placket.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine.Model.OptionSpec;

/** The help of each command, and the options that every command has alike. */
class HelpTest {
  private static final String DRAWING =
      "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 90 100'>"
          + "<rect x='10' y='10' width='70' height='80' fill='none' stroke='#000'/></svg>";

  @TempDir Path dir;

  private static List<OptionSpec> options(String command) {
    return Main.line(System.out, System.err).getSubcommands().values().stream()
        .filter(c -> c.getCommandName().equals(command))
        .flatMap(c -> c.getCommandSpec().options().stream())
        .toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"fit", "probe", "prepare", "starter", "number"})
  void everyOptionIsListedOnceWithin80Columns(String command) {
    Run help = Run.of(command, "--help");
    assertEquals(0, help.code(), help.err());
    for (OptionSpec option : options(command)) {
      long listed =
          Pattern.compile("(?m)^ +(-\\w, +)?" + option.longestName() + "(?![-\\w])")
              .matcher(help.out())
              .results()
              .count();
      assertEquals(1, listed, option.longestName() + "\n" + help.out());
    }
    help.out().lines().forEach(line -> assertTrue(line.length() <= 80, line));
  }

  /** The headings and their order are those of the README. */
  @ParameterizedTest
  @CsvSource({
    "fit, Input Paper and sheets Pictures Output Workbooks Limits Help Examples",
    "probe, Input Pictures Output Limits Help",
    "prepare, Input Pictures Output Limits Help",
    "starter, Folder Output Help",
    "number, Description Output Help"
  })
  void optionsAreGroupedByWhatTheyAreFor(String command, String headings) {
    List<String> found =
        Run.of(command, "--help")
            .out()
            .lines()
            .filter(line -> line.matches("[A-Z][a-z ]+:"))
            .map(line -> line.substring(0, line.length() - 1))
            .toList();
    assertEquals(headings, String.join(" ", found));
  }

  /** Common practice of commands: what a reader expects of the names. */
  @Test
  void commonNamesAreTaken() {
    for (String command : List.of("fit", "prepare", "starter")) {
      List<String> names =
          options(command).stream().flatMap(o -> List.of(o.names()).stream()).toList();
      assertTrue(names.containsAll(List.of("-h", "-V", "-q", "--quiet", "--overwrite")), command);
      assertEquals(!command.equals("starter"), names.contains("-o"), command);
      assertFalse(
          names.stream().anyMatch(n -> n.matches("--(replace|most-.*|leeway|weight|keep-ground)")),
          command);
    }
  }

  @Test
  void quietPrintsNothingOnSuccess() throws IOException {
    Path flats = Files.createDirectory(dir.resolve("flats"));
    Path front = Files.writeString(flats.resolve("front.svg"), DRAWING);
    assertEquals(new Run(0, "", ""), Run.of("fit", flats, "-q", "-o", dir.resolve("sheets")));
    assertTrue(Files.exists(dir.resolve("sheets/fit.json")));
    assertEquals(
        new Run(0, "", ""),
        Run.of("prepare", front, "--at", "90mm", "--quiet", "-o", dir.resolve("copies")));
    assertEquals(new Run(0, "", ""), Run.of("starter", dir.resolve("style"), "-q"));
  }

  @Test
  void quietStillReportsWhatFallsShortOrIsRefused() throws IOException {
    Path flats = Files.createDirectory(dir.resolve("flats"));
    Files.writeString(flats.resolve("front.svg"), DRAWING);
    Run over = Run.of("fit", flats, "-q", "--max-size", "0.0001");
    assertEquals(3, over.code(), over.err());
    assertTrue(over.out().contains("What to do next"), over.out());
    Run again = Run.of("fit", flats, "-q");
    assertEquals(2, again.code());
    assertTrue(again.err().contains("--overwrite"), again.err());
  }

  @Test
  void quietLeavesTheJson() throws IOException {
    Path flats = Files.createDirectory(dir.resolve("flats"));
    Files.writeString(flats.resolve("front.svg"), DRAWING);
    Run json = Run.of("fit", flats, "-q", "--json");
    assertEquals(Files.readString(flats.resolve("placket/fit.json")), json.out());
    assertEquals("", json.err());
  }
}
