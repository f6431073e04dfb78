package dev.placket.demo;

import dev.placket.demo.console.ExitCodes;
import dev.placket.demo.console.Messages;
import dev.placket.demo.console.PlainSigns;
import dev.placket.demo.options.OptionGroup;
import dev.placket.demo.prepare.PrepareCommand;
import dev.placket.demo.probe.ProbeCommand;
import dev.placket.pictures.fault.Visible;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** The command {@code placket}. */
public final class Main {
  /** The program and its version. */
  static final String VERSION = "placket 0.1.0";

  /** The signs of a report beyond ASCII. */
  private static final String SIGNS = "×–…";

  private static final String LOG = "org.apache.commons.logging.impl.";

  /** Exit code for an internal error. */
  private static final int UNFORESEEN = 1;

  private Main() {}

  /** Runs the command and ends the process with its exit code. */
  public static void main(String[] args) {
    // No window is ever opened, and a library's log is not for designers.
    System.setProperty("java.awt.headless", "true");
    System.setProperty("org.apache.commons.logging.LogFactory", LOG + "LogFactoryImpl");
    System.setProperty("org.apache.commons.logging.Log", LOG + "NoOpLog");
    System.exit(run(args, stream(FileDescriptor.out), stream(FileDescriptor.err), true));
  }

  /**
   * Runs the command in this process.
   *
   * @param out takes the report
   * @param err takes messages
   * @return the exit code
   */
  public static int run(String[] args, PrintStream out, PrintStream err) {
    return run(args, out, err, false);
  }

  private static int run(String[] args, PrintStream out, PrintStream err, boolean terminal) {
    List<String> foreign = Stream.of(args).filter(a -> !inThisLocale(a)).toList();
    if (!foreign.isEmpty()) {
      Messages.print(
          err,
          List.of(
              "'"
                  + foreign.get(0)
                  + "': has letters that this locale cannot represent; set another, as in"
                  + " LC_ALL=C.UTF-8."));
      return ExitCodes.INPUT;
    }
    CommandLine line = line(args, out, err, terminal);
    try {
      int code = line.execute(args);
      return reported(out, err) ? code : Math.max(code, ExitCodes.INPUT);
    } catch (OutOfMemoryError e) {
      return outOfMemory(err);
    } catch (StackOverflowError e) {
      return unforeseen(e, err);
    }
  }

  /** Whether all that was printed arrived: a stream keeps its failures to itself. */
  private static boolean reported(PrintStream out, PrintStream err) {
    if (out.checkError()) {
      err.println(
          "placket: standard output is full or closed; the report is incomplete, the files are"
              + " complete.");
      return false;
    }
    return true;
  }

  /** The whole command, as its help shows it. */
  public static CommandLine line(PrintStream out, PrintStream err) {
    return line(new String[0], out, err, false);
  }

  /** With the command that is asked for alone, where it is known: each takes a while to set up. */
  private static CommandLine line(
      String[] args, PrintStream out, PrintStream err, boolean terminal) {
    Map<String, Supplier<Object>> known = new LinkedHashMap<>();
    known.put("fit", () -> new FitCommand(out, err, terminal));
    known.put("probe", () -> new ProbeCommand(out, err));
    known.put("starter", () -> new StarterCommand(out, err));
    known.put("form", () -> new FormCommand(out, err));
    known.put("revise", () -> new ReviseCommand(out, err));
    known.put("number", () -> new NumberCommand(out, err));
    known.put("issue", () -> new IssueCommand(out, err));
    known.put("compare", () -> new ChangesCommand(out, err));
    known.put("prepare", () -> new PrepareCommand(out, err));
    CommandLine line = new CommandLine(placket());
    Supplier<Object> asked = args.length == 0 ? null : known.get(args[0]);
    if (asked != null) {
      line.addSubcommand(asked.get());
    } else {
      known.values().forEach(each -> line.addSubcommand(each.get()));
    }
    line.getSubcommands().values().forEach(OptionGroup::inHelpOf);
    line.setOut(new PrintWriter(out, true));
    line.setErr(new PrintWriter(err, true));
    line.setUsageHelpAutoWidth(false);
    line.setParameterExceptionHandler((problem, given) -> wrongUsage(problem, err));
    line.setExecutionExceptionHandler((problem, at, parsed) -> unforeseen(problem, err));
    return line;
  }

  /** What Java could not read of the arguments, it can write into no file name either. */
  private static boolean inThisLocale(String argument) {
    String charset = System.getProperty("sun.jnu.encoding", "UTF-8");
    return Charset.forName(charset).newEncoder().canEncode(argument);
  }

  private static int wrongUsage(CommandLine.ParameterException problem, PrintStream err) {
    Messages.print(err, List.of(String.valueOf(problem.getMessage())));
    CommandLine at = problem.getCommandLine();
    if (!CommandLine.UnmatchedArgumentException.printSuggestions(problem, at.getErr())) {
      at.usage(at.getErr());
    }
    return ExitCodes.INPUT;
  }

  /** The command without a subcommand: lists the subcommands. */
  private static CommandSpec placket() {
    CommandSpec spec = CommandSpec.create().name("placket").version(VERSION);
    spec.mixinStandardHelpOptions(true);
    spec.usageMessage()
        .synopsisSubcommandLabel("COMMAND")
        .description("Fits garment drawings onto the ruled sheets of a spec pack.");
    return spec;
  }

  private static int outOfMemory(PrintStream err) {
    err.println(
        "placket: the pictures need more memory than the "
            + (Runtime.getRuntime().maxMemory() >> 20)
            + " MiB that Java may use; give it more, as in PLACKET_JAVA_OPTS=-Xmx2g, or use fewer or"
            + " smaller pictures.");
    return ExitCodes.INPUT;
  }

  /** Memory that ran out in another thread, or while a file was closed, comes as a cause. */
  private static boolean isOutOfMemory(Throwable problem) {
    for (Throwable t = problem; t != null; t = t.getCause()) {
      if (t instanceof OutOfMemoryError) {
        return true;
      }
    }
    return false;
  }

  /** Prints one line for a report, in place of a stack trace. */
  private static int unforeseen(Throwable problem, PrintStream err) {
    if (isOutOfMemory(problem)) {
      return outOfMemory(err);
    }
    StackTraceElement[] trace = problem.getStackTrace();
    err.println(
        "placket: internal error; please report it and attach the drawings: "
            + Visible.words(problem.toString())
            + (trace.length == 0 ? "" : " at " + trace[0]));
    return UNFORESEEN;
  }

  /** In the terminal's letters; where it lacks some, they are spelled with plain ones. */
  private static PrintStream stream(FileDescriptor to) {
    Charset charset = Charset.forName(System.getProperty("native.encoding", "UTF-8"));
    OutputStream out = new FileOutputStream(to);
    return charset.newEncoder().canEncode(SIGNS)
        ? new PrintStream(out, true, charset)
        : new PlainSigns(out);
  }
}
