package dev.placket.layout.check;

import static dev.placket.layout.check.HandMade.assertBroken;
import static dev.placket.layout.check.HandMade.at;
import static dev.placket.layout.check.HandMade.change;
import static dev.placket.layout.check.HandMade.d;
import static dev.placket.layout.check.HandMade.fit;
import static dev.placket.layout.check.HandMade.moveTo;
import static dev.placket.layout.check.HandMade.request;
import static dev.placket.layout.check.HandMade.rescale;
import static dev.placket.layout.check.HandMade.withPlacements;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.Placement;
import dev.placket.layout.fit.Proof;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Who is placed, how finely, and whether the proof is possible. */
class RefereeRollCallTest {
  @Test
  void refusesAMissingFlat() {
    List<Placement> three = fit().placements().subList(0, 3);
    assertBroken(request(), withPlacements(fit(), three), "placed once");
  }

  @Test
  void refusesADoubledFlat() {
    List<Placement> five = new ArrayList<>(fit().placements());
    five.add(new Placement("swatch", d("1"), d("50"), d("600"), true));
    assertBroken(request(), withPlacements(fit(), five), "placed once");
  }

  @Test
  void refusesAFlatThatNobodyAskedFor() {
    List<Placement> five = new ArrayList<>(fit().placements());
    five.add(at("sleeve", "1", "50", "600"));
    assertBroken(request(), withPlacements(fit(), five), "placed once");
  }

  @Test
  void refusesSwappedPlacements() {
    Fit swapped =
        change(
            change(fit(), "front", p -> at("detail", "1.2", "50", "145.5")),
            "detail",
            p -> p.left().equals(d("264")) ? at("front", "1.44", "264", "65.9") : p);
    List<Breach> found = Referee.check(request(), swapped);
    assertTrue(found.stream().anyMatch(b -> b.rule().equals("gap")), found::toString);
    assertTrue(found.stream().anyMatch(b -> b.rule().equals("scale group")), found::toString);
    assertTrue(found.stream().anyMatch(b -> b.rule().equals("common scale")), found::toString);
  }

  @Test
  void refusesAScaleOfNoughtOrLess() {
    assertBroken(request(), rescale(fit(), "detail", "0"), "scale");
    assertBroken(request(), rescale(fit(), "detail", "-1.44"), "scale");
  }

  @Test
  void refusesAPositionFinerThanTheFile() {
    assertBroken(request(), moveTo(fit(), "detail", "264.0000000001", "65.9"), "rounding");
    assertBroken(request(), moveTo(fit(), "detail", "264", "65.8999999999"), "rounding");
    assertBroken(request(), moveTo(fit(), "detail", "264.000000001000", "65.9"));
  }

  @Test
  void refusesABoundBelowTheScale() {
    assertBroken(request(), withProof("1.2", 1.2));
    assertBroken(request(), withProof("1.2", Double.POSITIVE_INFINITY));
    assertBroken(request(), withProof("1.2", Math.nextDown(1.2)), "proof");
    assertBroken(request(), withProof("1.2", Double.NaN), "proof");
    assertBroken(request(), withProof("1.2", Double.NEGATIVE_INFINITY), "proof");
  }

  @Test
  void refusesACommonScaleOfNought() {
    assertBroken(request(), withProof("0", 1.2), "proof");
  }

  private static Fit withProof(String scale, double bound) {
    return new Fit(fit().placements(), new Proof(d(scale), bound, 1, false), List.of());
  }
}
