package dev.placket.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.placket.demo.manual.Manual;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** The manual page and the completion know every command with every option. */
class ManualTest {
  @TempDir Path dir;

  @BeforeEach
  void write() throws IOException {
    Manual.main(new String[] {dir.toString()});
  }

  @Test
  void bothKnowEveryOption() throws IOException {
    String page = Files.readString(dir.resolve("placket.1")).replace("\\-", "-");
    String completion = Files.readString(dir.resolve("placket-completion"));
    CommandLine line = Main.line(System.out, System.err);
    assertEquals(9, line.getSubcommands().size());
    for (CommandLine command : line.getSubcommands().values()) {
      String name = command.getCommandName();
      assertTrue(page.contains(".SS " + name + "\n"), name);
      assertTrue(completion.contains("_picocli_placket_" + name), name);
      for (OptionSpec option : command.getCommandSpec().options()) {
        assertTrue(page.contains(option.longestName()), name + " " + option.longestName());
        assertTrue(completion.contains(option.longestName()), name + " " + option.longestName());
      }
    }
  }

  /** man(7): a page begins with .TH and has the sections NAME and SYNOPSIS. */
  @Test
  void thePageHasWhatAPageHas() throws IOException {
    List<String> lines = Files.readAllLines(dir.resolve("placket.1"));
    assertTrue(lines.get(0).startsWith(".TH PLACKET 1 "), lines.get(0));
    assertEquals(List.of(".SH NAME", ".SH SYNOPSIS", ".SH COMMANDS"), sections(lines));
  }

  private static List<String> sections(List<String> lines) {
    return lines.stream().filter(l -> l.startsWith(".SH ")).toList();
  }

  @Test
  void aShellReadsTheCompletion() throws IOException, InterruptedException {
    assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "needs bash");
    Process bash =
        new ProcessBuilder("/bin/bash", "-n", dir.resolve("placket-completion").toString())
            .inheritIO()
            .start();
    assertEquals(0, bash.waitFor());
  }
}
