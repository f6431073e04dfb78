package dev.placket.demo.options;

import picocli.CommandLine.Option;

/** The option that refuses pictures that cannot be drawn as their files say. */
public final class StrictOption {
  @Option(
      names = "--strict",
      description =
          "Refuses pictures that cannot be drawn exactly as their files say, and names each"
              + " difference; nothing is written.")
  private boolean strict;

  /** Whether it is given. */
  public boolean asked() {
    return strict;
  }
}
