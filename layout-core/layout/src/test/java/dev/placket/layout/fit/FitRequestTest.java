package dev.placket.layout.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Held;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Limits;
import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.flat.Surround;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.PlanePoint;
import dev.placket.layout.units.Rect;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Requests and answers are values that cannot be built wrong and that any engine can carry. */
class FitRequestTest {
  private static final Length ONE = Length.mm(1);
  private static final Flat FLAT = Flat.of("f", Role.FRONT, InkedBox.ofSize(3, 4));
  private static final Sheet SHEET =
      Sheet.open(
          "s",
          PaperSize.A4,
          Margins.all(Length.mm(10)),
          List.of(new LabelledCell("c", new Rect(30, 30, 90, 40))));
  private static final FitRequest REQUEST =
      FitRequest.of(SHEET, List.of(FLAT), Spacing.NONE.withGap(ONE).withClearance(ONE));

  @Test
  void refusesNoFlatsTwoOfOneNameAndUnknownWindows() {
    Exception e = assertThrows(IllegalArgumentException.class, () -> REQUEST.withFlats(List.of()));
    assertEquals("nothing to place on sheet s", e.getMessage());
    e = assertThrows(IllegalArgumentException.class, () -> REQUEST.withFlats(List.of(FLAT, FLAT)));
    assertEquals("two flats are called 'f'", e.getMessage());
    Flat elsewhere = FLAT.withWindows(List.of("attic"));
    e = assertThrows(IllegalArgumentException.class, () -> REQUEST.withFlats(List.of(elsewhere)));
    assertEquals("sheet s has no window 'attic'; it has [page]", e.getMessage());
  }

  @Test
  void budgetsAndSharesHaveTheirRange() {
    assertThrows(IllegalArgumentException.class, () -> new Budget(0));
    assertThrows(IllegalArgumentException.class, () -> new Order(-0.01, List.of()));
    assertThrows(IllegalArgumentException.class, () -> new Order(1, List.of()));
    assertThrows(IllegalArgumentException.class, () -> new Order(Double.NaN, List.of()));
  }

  @Test
  void aProofIsReadOffItsTwoNumbers() {
    // Proven means a gap of at most one part in a million.
    assertTrue(proof("2", 2).proven());
    assertTrue(proof("2", 2.0000019).proven());
    assertFalse(proof("2", 2.0000021).proven());
    assertEquals(0.25, proof("2", 2.5).gap(), 1e-15);
    assertEquals(0, proof("2", 2).gap());
  }

  @Test
  void aRequestComesBackFromItsJson() throws JsonProcessingException {
    Flat full =
        FLAT.withSurround(Surround.caption(ONE, ONE))
            .withWindows(List.of("page"))
            .withGroup("g", 0.3)
            .withLimits(new Limits(ONE, Length.mm(90)))
            .withHeld(new Held(ONE, null, 0.1))
            .withUnitLength(ONE)
            .withPoints(Map.of("waist", new PlanePoint(1, 2)), "waist")
            .withMayFlow(true);
    FitRequest request =
        REQUEST.withFlats(List.of(full, Flat.of("g", Role.STEP, InkedBox.ofSize(1, 1))));
    ObjectMapper json = CarriedAsJson.mapper();
    String text = json.writeValueAsString(request);
    assertEquals(request, json.readValue(text, FitRequest.class));
  }

  @Test
  void anAnswerComesBackFromItsJson() throws JsonProcessingException {
    Placement placement =
        new Placement(
            "f",
            new BigDecimal("1.23456789012"),
            new BigDecimal("28.346457"),
            new BigDecimal("30"),
            true);
    Fit fit =
        new Fit(
            List.of(placement),
            new Proof(new BigDecimal("1.23456789012"), 1.3, 17, true),
            List.of(new OrderStep(OrderWish.LEVEL_VIEWS, true, 0.021)));
    ObjectMapper json = new ObjectMapper();
    assertEquals(fit, json.readValue(json.writeValueAsString(fit), Fit.class));
    Conflict conflict =
        new Conflict(
            List.of(new Requirement(Requirement.Kind.WINDOW, List.of("f"))),
            List.of(new Relief(Relief.Kind.LEAVE_OUT, "f", null, 1, Relief.Unit.FLAT)),
            true,
            false,
            3);
    assertEquals(conflict, json.readValue(json.writeValueAsString(conflict), Conflict.class));
  }

  @Test
  void aPlacementIsFoundByItsFlat() {
    Fit fit = new Fit(List.of(), proof("1", 1), List.of());
    Exception e = assertThrows(IllegalArgumentException.class, () -> fit.placement("f"));
    assertEquals("no placement for flat 'f'", e.getMessage());
  }

  private static Proof proof(String scale, double bound) {
    return new Proof(new BigDecimal(scale), bound, 1, false);
  }
}
