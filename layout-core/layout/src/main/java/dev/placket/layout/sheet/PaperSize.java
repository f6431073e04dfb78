package dev.placket.layout.sheet;

import dev.placket.layout.units.Length;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A sheet's paper, either way up.
 *
 * <p>A sizes from ISO 216, Letter and 11x17 from ASME Y14.1, Legal from trade use.
 *
 * @param name what people call it, as in {@code A4}
 * @param width above zero
 * @param height above zero
 */
public record PaperSize(String name, Length width, Length height) {
  /** 841 by 1,189 mm, upright. */
  public static final PaperSize A0 = new PaperSize("A0", Length.mm(841), Length.mm(1189));

  /** 594 by 841 mm, upright. */
  public static final PaperSize A1 = new PaperSize("A1", Length.mm(594), Length.mm(841));

  /** 420 by 594 mm, upright. */
  public static final PaperSize A2 = new PaperSize("A2", Length.mm(420), Length.mm(594));

  /** 297 by 420 mm, upright. */
  public static final PaperSize A3 = new PaperSize("A3", Length.mm(297), Length.mm(420));

  /** 210 by 297 mm, upright. */
  public static final PaperSize A4 = new PaperSize("A4", Length.mm(210), Length.mm(297));

  /** 148 by 210 mm, upright. */
  public static final PaperSize A5 = new PaperSize("A5", Length.mm(148), Length.mm(210));

  /** 105 by 148 mm, upright. */
  public static final PaperSize A6 = new PaperSize("A6", Length.mm(105), Length.mm(148));

  /** 8.5 by 11 inches, upright. */
  public static final PaperSize LETTER = new PaperSize("Letter", Length.in(8.5), Length.in(11));

  /** 8.5 by 14 inches, upright. */
  public static final PaperSize LEGAL = new PaperSize("Legal", Length.in(8.5), Length.in(14));

  /** 11 by 17 inches, upright. */
  public static final PaperSize ELEVEN_BY_SEVENTEEN =
      new PaperSize("11x17", Length.in(11), Length.in(17));

  /** The papers known by name, upright. */
  public static final List<PaperSize> NAMED =
      List.of(A0, A1, A2, A3, A4, A5, A6, LETTER, LEGAL, ELEVEN_BY_SEVENTEEN);

  /**
   * Checks that both sides are above zero.
   *
   * @throws IllegalArgumentException if one is not
   */
  public PaperSize {
    if (width.pt() <= 0 || height.pt() <= 0) {
      throw new IllegalArgumentException(
          "paper " + name + " measures " + width.mm() + " by " + height.mm() + " mm");
    }
  }

  /** The named paper, whatever its letter case; empty for an unknown name. */
  public static Optional<PaperSize> named(String name) {
    String wanted = name.toLowerCase(Locale.ROOT);
    return NAMED.stream().filter(p -> p.name.toLowerCase(Locale.ROOT).equals(wanted)).findFirst();
  }

  /** The same paper with its long side across. */
  public PaperSize landscape() {
    return width.compareTo(height) >= 0 ? this : new PaperSize(name, height, width);
  }

  /** The same paper with its long side up. */
  public PaperSize portrait() {
    return width.compareTo(height) <= 0 ? this : new PaperSize(name, height, width);
  }
}
