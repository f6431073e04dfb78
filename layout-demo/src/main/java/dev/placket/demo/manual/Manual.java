package dev.placket.demo.manual;

import dev.placket.demo.Main;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.AutoComplete;
import picocli.CommandLine;

/** Writes the manual page {@code placket.1} and the completion for bash and zsh; the build does. */
public final class Manual {
  private Manual() {}

  /**
   * Writes both.
   *
   * @param args the folder to write into
   */
  public static void main(String[] args) throws IOException {
    Path folder = Files.createDirectories(Path.of(args[0]));
    CommandLine line = Main.line(System.out, System.err);
    Files.writeString(folder.resolve("placket.1"), ManPage.of(line));
    Files.writeString(folder.resolve("placket-completion"), AutoComplete.bash("placket", line));
  }
}
