package dev.placket.workbooks.geometry;

import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.units.Length;
import java.util.Map;
import java.util.Optional;

/**
 * The papers that a worksheet names by number (ISO/IEC 29500-1, 18.3.1.63, paperSize), envelopes
 * and continuous forms left out. A size that {@link PaperSize#NAMED} has is that paper, so a paper
 * added there is known here.
 */
public final class PaperCode {
  /** What applies where a worksheet names none. */
  public static final int UNSTATED = 1;

  private static final Map<Integer, PaperSize> PAPERS =
      Map.ofEntries(
          Map.entry(1, PaperSize.LETTER),
          Map.entry(2, PaperSize.LETTER),
          Map.entry(3, PaperSize.ELEVEN_BY_SEVENTEEN),
          Map.entry(4, PaperSize.ELEVEN_BY_SEVENTEEN),
          Map.entry(5, PaperSize.LEGAL),
          Map.entry(6, inches("Statement", 5.5, 8.5)),
          Map.entry(7, inches("Executive", 7.25, 10.5)),
          Map.entry(8, PaperSize.A3),
          Map.entry(9, PaperSize.A4),
          Map.entry(10, PaperSize.A4),
          Map.entry(11, PaperSize.A5),
          Map.entry(12, millimetres("B4", 250, 353)),
          Map.entry(13, millimetres("B5", 176, 250)),
          Map.entry(14, inches("Folio", 8.5, 13)),
          Map.entry(15, millimetres("Quarto", 215, 275)),
          Map.entry(16, inches("10x14", 10, 14)),
          Map.entry(17, PaperSize.ELEVEN_BY_SEVENTEEN),
          Map.entry(18, PaperSize.LETTER),
          Map.entry(24, inches("C", 17, 22)),
          Map.entry(25, inches("D", 22, 34)),
          Map.entry(26, inches("E", 34, 44)),
          Map.entry(42, millimetres("B4", 250, 353)),
          Map.entry(55, PaperSize.A4),
          Map.entry(66, PaperSize.A2));

  private PaperCode() {}

  /** The paper of a number, upright; empty for a number that is not known here. */
  public static Optional<PaperSize> paper(int code) {
    return Optional.ofNullable(PAPERS.get(code));
  }

  private static PaperSize inches(String name, double width, double height) {
    return named(new PaperSize(name, Length.in(width), Length.in(height)));
  }

  private static PaperSize millimetres(String name, double width, double height) {
    return named(new PaperSize(name, Length.mm(width), Length.mm(height)));
  }

  private static PaperSize named(PaperSize stated) {
    return PaperSize.NAMED.stream()
        .filter(p -> p.width().equals(stated.width()) && p.height().equals(stated.height()))
        .findFirst()
        .orElse(stated);
  }
}
