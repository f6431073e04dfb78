package dev.placket.demo.options;

import picocli.CommandLine.Option;

/** The option that leaves the report out where everything succeeds. */
public final class QuietOption {
  @Option(
      names = {"-q", "--quiet"},
      description = "Prints no report if the exit code is 0; messages still appear.")
  private boolean quiet;

  /** Whether it is given. */
  public boolean given() {
    return quiet;
  }
}
