package dev.placket.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * A library speaks no command line: neither its texts nor its comments name an option or an exit
 * code. Only the command knows them.
 */
public abstract class SpeechRules {
  /** Texts and comments of Java (JLS 17, 3.7 and 3.10.4 to 3.10.6); all else is code. */
  private static final Pattern WORDS =
      Pattern.compile(
          "\"\"\"[\\s\\S]*?\"\"\"|\"(?:\\\\.|[^\"\\\\\\n])*+\"|'(?:\\\\.|[^'\\\\\\n])++'"
              + "|//[^\\n]*|/\\*[\\s\\S]*?\\*/");

  /** A custom property of a style sheet (CSS Custom Properties 1) looks like an option. */
  private static final String PROPERTY = "var(";

  private static final Pattern OPTION =
      Pattern.compile("(?<![-\\w])--[a-z][a-z-]*|(?i:\\bexit codes?\\b)");

  /** The library under test. */
  protected abstract Library library();

  @Test
  void namesNoOptionAndNoExitCode() throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.walk(library().sources())) {
      files = all.filter(f -> f.toString().endsWith(".java")).sorted().toList();
    }
    assertTrue(files.size() > 10, "the scan finds the sources: " + files.size());
    List<String> named = files.stream().flatMap(SpeechRules::named).toList();
    assertEquals(List.of(), named);
  }

  @Test
  void seesOptionsInTextsAndCommentsAlone() {
    assertEquals(List.of("--strict"), options("/** With {@code --strict}. */ int n = k--;"));
    assertEquals(List.of("--out"), options("say(\"give \\\"it\\\" with --out.\"); i = --size;"));
    assertEquals(List.of("--a", "exit code"), options("\"\"\"\n--a\n\"\"\" // exit code 4\n"));
    assertEquals(List.of(), options("color: \"var(--pick)\" + '\"' + --size + '\"'"));
  }

  private static Stream<String> named(Path file) {
    try {
      return options(Files.readString(file)).stream().map(o -> file.getFileName() + ": " + o);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static List<String> options(String source) {
    return WORDS
        .matcher(source)
        .results()
        .map(m -> m.group().replace(PROPERTY + "--", PROPERTY))
        .flatMap(words -> OPTION.matcher(words).results())
        .map(MatchResult::group)
        .toList();
  }
}
