package dev.placket.workbooks.geometry;

import dev.placket.layout.sheet.Paper;
import dev.placket.layout.units.Length;
import java.util.Map;
import java.util.Optional;

/** The papers that a worksheet names by number (ISO/IEC 29500-1, 18.3.1.63, paperSize). */
public final class PaperCode {
  /** What holds where a worksheet names none. */
  public static final int UNSTATED = 1;

  private static final Map<Integer, Paper> PAPERS =
      Map.ofEntries(
          Map.entry(1, Paper.LETTER),
          Map.entry(2, Paper.LETTER),
          Map.entry(3, Paper.ELEVEN_BY_SEVENTEEN),
          Map.entry(4, Paper.ELEVEN_BY_SEVENTEEN),
          Map.entry(5, Paper.LEGAL),
          Map.entry(7, new Paper("Executive", Length.in(7.25), Length.in(10.5))),
          Map.entry(8, Paper.A3),
          Map.entry(9, Paper.A4),
          Map.entry(10, Paper.A4),
          Map.entry(11, Paper.A5),
          Map.entry(12, new Paper("B4", Length.mm(250), Length.mm(353))),
          Map.entry(13, new Paper("B5", Length.mm(176), Length.mm(250))),
          Map.entry(14, new Paper("Folio", Length.in(8.5), Length.in(13))),
          Map.entry(66, new Paper("A2", Length.mm(420), Length.mm(594))));

  private PaperCode() {}

  /** The paper of a number, upright; empty for a number that is not known here. */
  public static Optional<Paper> paper(int code) {
    return Optional.ofNullable(PAPERS.get(code));
  }
}
