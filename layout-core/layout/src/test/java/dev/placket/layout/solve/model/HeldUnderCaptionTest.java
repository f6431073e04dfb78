package dev.placket.layout.solve.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.check.Referee;
import dev.placket.layout.fit.Conflict;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Order;
import dev.placket.layout.fit.Outcome;
import dev.placket.layout.fit.Proof;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Held;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.flat.Surround;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.solve.Fitter;
import dev.placket.layout.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A held left edge under a caption wider than the ink, by hand. The ink is 10 by 10 in its units,
 * the caption 100 pt wide and centred, the sheet 60 pt high. At scale t the caption reaches (100 -
 * 10 t) / 2 left of the ink, so it stays on the sheet from some t on, and the height ends t at 6.
 */
class HeldUnderCaptionTest {
  private static final double LARGEST = 6;

  private static FitRequest request(double heldLeft) {
    Sheet sheet =
        Sheet.open(
            "by hand",
            new PaperSize("any", Length.pt(200), Length.pt(60)),
            Margins.all(Length.ZERO),
            List.of());
    Flat flat =
        Flat.of("flat", Role.SWATCH, InkedBox.ofSize(10, 10))
            .withSurround(Surround.caption(Length.ZERO, Length.pt(100)))
            .withHeld(new Held(Length.pt(heldLeft), null, null));
    return FitRequest.of(sheet, List.of(flat), Spacing.NONE)
        .withOrder(Order.NONE)
        .withGrowth(false);
  }

  /** 30 pt are enough from t = 4 on, though no smaller t fits. */
  @Test
  void smallScalesThatDoNotFitBarNoLargerOne() {
    Fit fit = assertInstanceOf(Fit.class, Fitter.fit(request(30)));
    assertEquals(LARGEST, fit.proof().scale().doubleValue(), 1e-6);
    assertTrue(fit.proof().bound() >= LARGEST, () -> "a false bound: " + fit.proof());
    assertEquals(List.of(), Referee.check(request(30), fit));
  }

  /** 20.5 pt are enough from t = 5.9 on: so short a stretch may be missed, never denied. */
  @Test
  void aShortStretchIsNeverDenied() {
    Outcome outcome = Fitter.fit(request(20.5));
    if (outcome instanceof Conflict conflict) {
      assertFalse(conflict.proven(), "said to be impossible: " + conflict);
    } else {
      Proof proof = assertInstanceOf(Fit.class, outcome).proof();
      assertTrue(proof.bound() >= LARGEST, () -> "a false bound: " + proof);
    }
  }
}
