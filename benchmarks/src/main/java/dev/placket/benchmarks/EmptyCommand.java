package dev.placket.benchmarks;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** A command that does nothing: the least that any command on this JVM takes. */
@Command(name = "empty", mixinStandardHelpOptions = true)
public final class EmptyCommand implements Runnable {
  /** Parses and ends. */
  public static void main(String[] args) {
    System.exit(new CommandLine(new EmptyCommand()).execute(args));
  }

  @Override
  public void run() {}
}
