package dev.placket.packs.report;

import dev.placket.pictures.base.PrintedDetail;

/** What is wrong with pictures, in the order in which it spoils a sample. */
enum StepKind {
  /** Prints blurred. */
  BLURRED("Export with more pixels, since they print blurred: "),
  /** Was enlarged before export. */
  ENLARGED("Export from the drawings themselves, since they were enlarged before export: "),
  /** Has lettering that is hard to read. */
  LETTERING("The smallest lettering is hard to read in print: "),
  /** Has lines that may break up. */
  LINE("The finest lines may break up in print; draw them wider: "),
  /** Has stitches that may merge. */
  GAP("Stitches may merge in print; space them out: "),
  /** Is limited in size to stay crisp. */
  HELD("Export with more pixels to print them larger; their size is limited to stay crisp: "),
  /** Has more pixels than are visible. */
  HEAVY("Export with fewer pixels, since more are not visible: ");

  /** The sentence about several pictures, before their names. */
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
