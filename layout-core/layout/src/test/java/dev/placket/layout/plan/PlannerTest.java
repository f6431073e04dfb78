package dev.placket.layout.plan;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.placket.layout.fit.Conflict;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.FlowResult;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Limits;
import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The planner returns what the referee passed, and nothing else. */
class PlannerTest {
  private static final Spacing SPACING =
      Spacing.NONE.withGap(Length.mm(10)).withClearance(Length.mm(10));

  private static FitRequest request(PaperSize paper, double greatest) {
    Sheet sheet = Sheet.open("flats", paper, Margins.all(Length.mm(10)), List.of());
    Flat front =
        Flat.of("front", Role.FRONT, InkedBox.ofSize(100, 200))
            .withLimits(new Limits(Length.ZERO, Length.mm(greatest)));
    return FitRequest.of(sheet, List.of(front), SPACING);
  }

  /** 100 mm high at most, for 200 drawing units: half a millimetre per unit. */
  @Test
  void returnsTheFit() {
    Fit fit = assertInstanceOf(Fit.class, Planner.plan(request(PaperSize.A4, 100)));
    double perUnit = Length.mm(0.5).pt();
    assertEquals(perUnit, fit.placement("front").scale().doubleValue(), 1e-9);
  }

  @Test
  void returnsAConflictAsAValue() {
    Sheet sheet = Sheet.open("flats", PaperSize.A6, Margins.all(Length.mm(10)), List.of());
    Flat wide =
        Flat.of("front", Role.FRONT, InkedBox.ofSize(100, 200))
            .withLimits(new Limits(Length.mm(500), null));
    assertInstanceOf(Conflict.class, Planner.plan(FitRequest.of(sheet, List.of(wide), SPACING)));
  }

  /** A fit at 100 mm breaks a request whose greatest size is 50 mm. */
  @Test
  void aFitThatBreaksARuleIsNotReturned() {
    Fit fit = (Fit) Planner.plan(request(PaperSize.A4, 100));
    FitRequest stricter = request(PaperSize.A4, 50);
    assertDoesNotThrow(() -> Planner.check(request(PaperSize.A4, 100), fit));
    RefutedFitException refuted =
        assertThrows(RefutedFitException.class, () -> Planner.check(stricter, fit));
    assertSame(stricter, refuted.request());
    assertFalse(refuted.breaches().isEmpty());
  }

  @Test
  void furtherSheetsAreCheckedToo() {
    FlowResult flow = Planner.planSheets(request(PaperSize.A4, 100));
    assertEquals(1, flow.sheets().size());
  }
}
