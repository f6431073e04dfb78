package dev.placket.demo.options;

import picocli.CommandLine.Option;

/** The option that refuses pictures which are drawn other than their files say. */
public final class StrictOption {
  @Option(
      names = "--strict",
      description =
          "Refuses pictures that would not be drawn as their files say, naming what is left out of"
              + " which; nothing is written.")
  private boolean strict;

  /** Whether it was asked for. */
  public boolean asked() {
    return strict;
  }
}
