package dev.placket.packs.report;

import dev.placket.pictures.PrintedDetail;

/** What is wrong with pictures, what spoils a sample first. */
enum StepKind {
  /** Prints blurred. */
  BLURRED("Export with more pixels, since they print blurred: "),
  /** Was enlarged before export. */
  ENLARGED("Export from the drawings themselves, since they were enlarged before export: "),
  /** Has lettering that is hard to read. */
  LETTERING("The smallest lettering is hard to read as it prints: "),
  /** Has lines that may break up. */
  LINE("The finest lines may break up as they print; draw them broader: "),
  /** Has stitches that may close up. */
  GAP("Stitches may close up as they print; space them out: "),
  /** Is held small to stay crisp. */
  HELD("Export with more pixels to see them larger; they are held small to stay crisp: "),
  /** Has pixels that are never seen. */
  HEAVY("Export with fewer pixels, since more are never seen: ");

  /** What is said of several pictures, before their names. */
  final String ofSeveral;

  StepKind(String ofSeveral) {
    this.ofSeveral = ofSeveral;
  }

  static StepKind of(PrintedDetail.Kind kind) {
    return switch (kind) {
      case LINE -> LINE;
      case LETTERING -> LETTERING;
      case GAP -> GAP;
    };
  }
}
