package dev.placket.demo;

import dev.placket.demo.console.ExitCodes;
import dev.placket.demo.console.Messages;
import dev.placket.demo.options.QuietOption;
import dev.placket.packs.output.Outputs;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.Visible;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code placket starter}: a commented description with its files, to begin from. */
@Command(
    name = "starter",
    mixinStandardHelpOptions = true,
    addMethodSubcommands = false,
    sortOptions = false,
    parameterListHeading = "Folder:%n",
    description = {
      "Writes a commented description and its files into a folder, ready for placket fit.",
      ""
    },
    footer = {
      "",
      "Exit codes: 0 written; 1 internal error; 2 wrong usage or existing files, nothing"
          + " written.",
      "",
      "Example: placket starter my-style",
      ""
    })
final class StarterCommand implements Callable<Integer> {
  private static final String DESCRIPTION = "pack.yaml";
  private static final List<String> FILES =
      List.of(DESCRIPTION, "front.svg", "back.svg", "pocket.svg", "patch.svg", "points.csv");
  private static final String SCHEMA = "placket-pack-1.schema.json";

  @Parameters(paramLabel = "DIR", description = "The folder; created if missing.")
  private Path folder = Path.of("");

  @Option(names = "--overwrite", description = "Overwrites existing files.")
  private boolean overwrite;

  @Mixin private QuietOption quiet = new QuietOption();

  private final PrintStream report;
  private final PrintStream messages;

  StarterCommand(PrintStream report, PrintStream messages) {
    this.report = report;
    this.messages = messages;
  }

  @Override
  public Integer call() {
    try {
      write();
      return 0;
    } catch (Refusal refusal) {
      Messages.printFaults(messages, refusal.faults());
      return ExitCodes.of(refusal);
    }
  }

  private void write() throws Refusal {
    Map<String, byte[]> files = new LinkedHashMap<>();
    FILES.forEach(name -> files.put(name, resource("/starter/" + name)));
    files.put(SCHEMA, resource("/" + SCHEMA));
    Outputs outputs = new Outputs(folder, overwrite);
    List<Fault> obstacles = outputs.obstacles(new ArrayList<>(files.keySet()));
    if (!obstacles.isEmpty()) {
      throw Refusal.input(obstacles);
    }
    outputs.write(files);
    if (quiet.given()) {
      return;
    }
    files
        .keySet()
        .forEach(f -> report.println("Written: " + Visible.line(folder.resolve(f).toString())));
    report.println("Next: placket fit " + Visible.line(folder.resolve(DESCRIPTION).toString()));
  }

  private static byte[] resource(String name) {
    try (InputStream in = StarterCommand.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(name + " is missing from the program");
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
