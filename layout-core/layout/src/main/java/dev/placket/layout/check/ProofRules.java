package dev.placket.layout.check;

import dev.placket.layout.fit.Proof;

/** The proof is possible: a scale above zero and a bound not below it. */
final class ProofRules {
  private ProofRules() {}

  /** Whether the scale can be used to judge the placements. */
  static boolean check(Proof proof, Breaches breaches) {
    double bound = proof.bound();
    boolean unbounded = bound == Double.POSITIVE_INFINITY;
    if (!unbounded && (Double.isNaN(bound) || isBelow(bound, proof))) {
      breaches.add("proof", "the bound " + bound + " is below the scale " + proof.scale());
    }
    if (proof.scale().signum() <= 0) {
      breaches.add("proof", "the common scale is " + proof.scale());
      return false;
    }
    return true;
  }

  private static boolean isBelow(double bound, Proof proof) {
    return Double.isInfinite(bound) || Exact.of(bound).compareTo(proof.scale()) < 0;
  }
}
