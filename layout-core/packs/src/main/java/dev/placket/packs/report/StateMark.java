package dev.placket.packs.report;

import dev.placket.layout.density.PrintState;

/** How a state is marked: the initial is always there, a colour never alone. */
public final class StateMark {
  private StateMark() {}

  /** Its initial. */
  public static String initial(PrintState state) {
    return switch (state) {
      case SOFT -> "S";
      case CRISP -> "C";
      case HEAVY -> "H";
      case SCALABLE -> "Sc";
    };
  }

  /** Its word. */
  public static String word(PrintState state) {
    return switch (state) {
      case SOFT -> "soft";
      case CRISP -> "crisp";
      case HEAVY -> "heavy";
      case SCALABLE -> "scalable";
    };
  }

  /** Its meaning, for a reader who sees it for the first time. */
  public static String meaning(PrintState state) {
    return switch (state) {
      case SOFT -> "too few pixels for its printed size";
      case CRISP -> "enough pixels for its printed size";
      case HEAVY -> "more pixels than are visible";
      case SCALABLE -> "drawn with paths, sharp at any size";
    };
  }
}
