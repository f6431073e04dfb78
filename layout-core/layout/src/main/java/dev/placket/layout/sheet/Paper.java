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
public record Paper(String name, Length width, Length height) {
  /** 841 by 1,189 mm, upright. */
  public static final Paper A0 = new Paper("A0", Length.mm(841), Length.mm(1189));

  /** 594 by 841 mm, upright. */
  public static final Paper A1 = new Paper("A1", Length.mm(594), Length.mm(841));

  /** 420 by 594 mm, upright. */
  public static final Paper A2 = new Paper("A2", Length.mm(420), Length.mm(594));

  /** 297 by 420 mm, upright. */
  public static final Paper A3 = new Paper("A3", Length.mm(297), Length.mm(420));

  /** 210 by 297 mm, upright. */
  public static final Paper A4 = new Paper("A4", Length.mm(210), Length.mm(297));

  /** 148 by 210 mm, upright. */
  public static final Paper A5 = new Paper("A5", Length.mm(148), Length.mm(210));

  /** 105 by 148 mm, upright. */
  public static final Paper A6 = new Paper("A6", Length.mm(105), Length.mm(148));

  /** 8.5 by 11 inches, upright. */
  public static final Paper LETTER = new Paper("Letter", Length.in(8.5), Length.in(11));

  /** 8.5 by 14 inches, upright. */
  public static final Paper LEGAL = new Paper("Legal", Length.in(8.5), Length.in(14));

  /** 11 by 17 inches, upright. */
  public static final Paper ELEVEN_BY_SEVENTEEN = new Paper("11x17", Length.in(11), Length.in(17));

  /** The papers known by name, upright. */
  public static final List<Paper> NAMED =
      List.of(A0, A1, A2, A3, A4, A5, A6, LETTER, LEGAL, ELEVEN_BY_SEVENTEEN);

  /**
   * Checks that both sides are above zero.
   *
   * @throws IllegalArgumentException if one is not
   */
  public Paper {
    if (width.pt() <= 0 || height.pt() <= 0) {
      throw new IllegalArgumentException(
          "paper " + name + " measures " + width.mm() + " by " + height.mm() + " mm");
    }
  }

  /** The named paper, whatever its letter case; empty for an unknown name. */
  public static Optional<Paper> named(String name) {
    String wanted = name.toLowerCase(Locale.ROOT);
    return NAMED.stream().filter(p -> p.name.toLowerCase(Locale.ROOT).equals(wanted)).findFirst();
  }

  /** The same paper with its long side across. */
  public Paper landscape() {
    return width.compareTo(height) >= 0 ? this : new Paper(name, height, width);
  }

  /** The same paper with its long side up. */
  public Paper portrait() {
    return width.compareTo(height) <= 0 ? this : new Paper(name, height, width);
  }
}
