package dev.placket.layout.solve.model;

import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.flat.Flat;
import java.util.List;

/** A request as plain arrays, read once and never changed: what all phases of the search share. */
public final class Model {
  /** Options of a pair (a, b), a before b in the request. */
  public static final int A_LEFT = 1;

  public static final int B_LEFT = 2;
  public static final int A_ABOVE = 4;
  public static final int B_ABOVE = 8;
  public static final int ANY = 15;

  public final FitRequest request;
  public final List<Flat> flats;
  public final int n;
  public final Scales scales;

  /** The room each flat may use; flats with the same windows and clearance share one. */
  public final Space[] space;

  /** The gap between two flats. */
  public final double[][] gap;

  /** Which options a pair has, by {@link #pair}. */
  public final byte[] options;

  /** Pairs of flats that may be swapped without any difference: the first may stand left. */
  final int[][] twins;

  /** The lowest t of this range. */
  public final double low;

  /** The highest t of this range, at most where every flat is at its greatest; may be infinite. */
  public final double end;

  /**
   * How much wider than ink and sides a footprint is on either side, for a flat of which that must
   * not depend on t; NaN for all others. See {@link HeldUnderCaption}.
   */
  final double[] aside;

  /** Whether footprints are as the rules say; else they are larger here and there. */
  public final boolean exact;

  /** The span of the page, for tolerances. */
  public final double span;

  Model(
      FitRequest request,
      List<Flat> flats,
      Scales scales,
      Space[] space,
      double[][] gap,
      byte[] options,
      int[][] twins,
      double[] range) {
    this(request, flats, scales, space, gap, options, twins, range, anywhere(flats.size()), true);
  }

  private Model(
      FitRequest request,
      List<Flat> flats,
      Scales scales,
      Space[] space,
      double[][] gap,
      byte[] options,
      int[][] twins,
      double[] range,
      double[] aside,
      boolean exact) {
    this.request = request;
    this.flats = flats;
    this.n = flats.size();
    this.scales = scales;
    this.space = space;
    this.gap = gap;
    this.options = options;
    this.twins = twins;
    this.low = range[0];
    this.end = range[1];
    this.aside = aside;
    this.exact = exact;
    this.span = request.sheet().inside().width() + request.sheet().inside().height();
  }

  private static double[] anywhere(int n) {
    double[] aside = new double[n];
    java.util.Arrays.fill(aside, Double.NaN);
    return aside;
  }

  /** The same for another range of t. */
  Model within(double[] range, double[] asides, boolean isExact) {
    return new Model(request, flats, scales, space, gap, options, twins, range, asides, isExact);
  }

  /** The same with some of the flats only, in the order given (rising). */
  public Model subset(int[] kept) {
    int m = kept.length;
    int[] classOf = new int[m];
    double[] ratio = new double[m];
    Space[] rooms = new Space[m];
    double[][] gaps = new double[m][m];
    byte[] its = new byte[pairs(m)];
    double[] asides = new double[m];
    for (int i = 0; i < m; i++) {
      classOf[i] = scales.classOf[kept[i]];
      ratio[i] = scales.ratio[kept[i]];
      rooms[i] = space[kept[i]];
      asides[i] = aside[kept[i]];
      for (int j = 0; j < m; j++) {
        gaps[i][j] = gap[kept[i]][kept[j]];
      }
      for (int j = 0; j < i; j++) {
        its[pair(j, i)] = options[pair(kept[j], kept[i])];
      }
    }
    List<Flat> some = java.util.Arrays.stream(kept).mapToObj(flats::get).toList();
    return new Model(
        request,
        some,
        scales.of(classOf, ratio),
        rooms,
        gaps,
        its,
        new int[0][],
        new double[] {low, end},
        asides,
        exact);
  }

  /** The same flats and rooms with other scales, from their t = low on. */
  public Model withScales(Scales other, double from) {
    double[] range = {from, other.end()};
    return new Model(request, flats, other, space, gap, options, twins, range, aside, exact);
  }

  /** The same flats, rooms and scales with other gaps, none of them smaller. */
  public Model withGaps(double[][] wider) {
    double[] range = {low, end};
    return new Model(request, flats, scales, space, wider, options, twins, range, aside, exact);
  }

  /** Whether two flats may use the same windows. */
  public boolean sameWindows(int a, int b) {
    return flats.get(a).windows().equals(flats.get(b).windows());
  }

  /** The number of the pair (a, b) with {@code a < b}. */
  public static int pair(int a, int b) {
    return b * (b - 1) / 2 + a;
  }

  /** How many pairs n flats make. */
  public static int pairs(int n) {
    return n * (n - 1) / 2;
  }
}
