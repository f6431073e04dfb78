package dev.placket.benchmarks;

import dev.placket.benchmarks.pages.PageException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine.Option;

/** The command placket as a build lays it out, and runs of it on this JVM. */
final class Placket {
  @Option(
      names = "--placket",
      paramLabel = "DIR",
      description = "The folder of the command; default: layout-demo/target/placket.")
  private Path folder = Path.of("layout-demo/target/placket");

  /** Checks that the command is there. */
  void need() {
    Runs.need(launcher(), "build it with mvn package, or name its folder with --placket");
  }

  boolean isBuilt() {
    return Files.exists(launcher());
  }

  /** Runs it with the heap that Java takes by itself; what it prints goes to the file. */
  Runs.Ended run(Path printed, List<String> arguments) {
    return run(printed, "", arguments);
  }

  /** Runs it in so many MiB of heap; what it prints goes to the file. */
  Runs.Ended run(Path printed, int mib, List<String> arguments) {
    return run(printed, "-Xmx" + mib + "m", arguments);
  }

  private Runs.Ended run(Path printed, String options, List<String> arguments) {
    List<String> command = new ArrayList<>(List.of(launcher().toString()));
    command.addAll(arguments);
    return Runs.process(printed, options, command);
  }

  /**
   * What starts it on this JVM in a process of its own, without a script that a kill would miss.
   */
  List<String> command() {
    Path java = Path.of(System.getProperty("java.home"), "bin", "java");
    String jars = folder.toAbsolutePath().resolve("lib") + File.separator + "*";
    return List.of(java.toString(), "-Xmx256m", "-cp", jars, "dev.placket.demo.Main");
  }

  /** All jars of the command. */
  List<Path> jars() {
    try (Stream<Path> all = Files.list(folder.resolve("lib"))) {
      return all.filter(p -> p.toString().endsWith(".jar")).sorted().toList();
    } catch (IOException e) {
      throw new PageException(folder + ": cannot be listed (" + e.getMessage() + ")");
    }
  }

  private Path launcher() {
    String name = File.separatorChar == '\\' ? "placket.cmd" : "placket";
    return folder.resolve("bin").resolve(name);
  }
}
