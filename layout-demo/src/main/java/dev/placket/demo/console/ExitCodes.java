package dev.placket.demo.console;

import dev.placket.packs.refusal.Refusal;

/** The codes that the command ends with, beside 0. */
public final class ExitCodes {
  /** An internal error. */
  public static final int INTERNAL = 1;

  /** The call or its input is at fault. */
  public static final int INPUT = 2;

  /** A picture is soft, or a file is over its size limit. */
  public static final int SHORT = 3;

  /** The flats have no room. */
  public static final int NO_ROOM = 4;

  private ExitCodes() {}

  /** The code of a refusal. */
  public static int of(Refusal refusal) {
    return switch (refusal.kind()) {
      case INPUT -> INPUT;
      case NO_ROOM -> NO_ROOM;
    };
  }
}
