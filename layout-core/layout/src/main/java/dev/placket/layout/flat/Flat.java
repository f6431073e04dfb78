package dev.placket.layout.flat;

import dev.placket.layout.units.Length;
import dev.placket.layout.units.Point;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * One picture to be placed: what it is, how large its ink is by nature, and what binds its size and
 * place.
 *
 * <p>Build one with {@link #of} and the {@code with} methods. A value: equal parts are equal flats.
 *
 * @param id unique among the flats of a sheet
 * @param role what it is to the sheet
 * @param ink its inked box, in its own units
 * @param surround the room round the ink that does not grow with it
 * @param windows names of the windows it may use; empty for all of them
 * @param group its scale group, or null if its target size is a share of the front's
 * @param share without a group: the longest side to aim at, as a share of the front's; above zero
 * @param limits least and greatest printed size
 * @param held what must not move
 * @param unitLength the real length of one drawing unit, or null if the drawing states none
 * @param points named spots in drawing units, for levels and callouts; element ids of the drawing
 *     among them
 * @param levelOn the name of the point on whose height views line up, or null for the bottom of the
 *     ink
 * @param mayFlow whether it may continue on a further sheet
 */
public record Flat(
    String id,
    Role role,
    InkedBox ink,
    Surround surround,
    List<String> windows,
    @Nullable ScaleGroup group,
    double share,
    Limits limits,
    Held held,
    @Nullable Length unitLength,
    Map<String, Point> points,
    @Nullable String levelOn,
    boolean mayFlow) {
  /**
   * Copies collections and checks the values.
   *
   * @throws IllegalArgumentException naming the flat, if the share is not above zero or {@code
   *     levelOn} is no point of it
   */
  public Flat {
    windows = List.copyOf(windows);
    points = java.util.Collections.unmodifiableMap(new TreeMap<>(points));
    if (!(share > 0) || !Double.isFinite(share)) {
      throw new IllegalArgumentException(
          "flat " + id + ": the share of the front's size is above zero, not " + share);
    }
    if (levelOn != null && !points.containsKey(levelOn)) {
      throw new IllegalArgumentException(
          "flat " + id + " has no point '" + levelOn + "' to stand level on");
    }
  }

  /** A flat with the defaults of its role: any window, no group, no limits, nothing held. */
  public static Flat of(String id, Role role, InkedBox ink) {
    return new Flat(
        id,
        role,
        ink,
        Surround.NONE,
        List.of(),
        null,
        role.share(),
        Limits.NONE,
        Held.NOTHING,
        null,
        Map.of(),
        null,
        false);
  }

  /** The height, in drawing units, on which this flat lines up with other views. */
  public double levelHeight() {
    Point p = levelOn == null ? null : points.get(levelOn);
    return p == null ? ink.bottom() : p.y();
  }

  /** This flat with another room round its ink. */
  public Flat withSurround(Surround s) {
    return new Flat(
        id,
        role,
        ink,
        s,
        windows,
        group,
        share,
        limits,
        held,
        unitLength,
        points,
        levelOn,
        mayFlow);
  }

  /** This flat kept to the windows named. */
  public Flat withWindows(List<String> names) {
    return new Flat(
        id,
        role,
        ink,
        surround,
        names,
        group,
        share,
        limits,
        held,
        unitLength,
        points,
        levelOn,
        mayFlow);
  }

  /** This flat in a scale group, at a ratio of its common scale. */
  public Flat withGroup(String name, double ratio) {
    ScaleGroup g = new ScaleGroup(name, ratio);
    return new Flat(
        id,
        role,
        ink,
        surround,
        windows,
        g,
        share,
        limits,
        held,
        unitLength,
        points,
        levelOn,
        mayFlow);
  }

  /** This flat aiming at another share of the front's longest side. */
  public Flat withShare(double s) {
    return new Flat(
        id,
        role,
        ink,
        surround,
        windows,
        group,
        s,
        limits,
        held,
        unitLength,
        points,
        levelOn,
        mayFlow);
  }

  /** This flat with other limits on its printed size. */
  public Flat withLimits(Limits l) {
    return new Flat(
        id,
        role,
        ink,
        surround,
        windows,
        group,
        share,
        l,
        held,
        unitLength,
        points,
        levelOn,
        mayFlow);
  }

  /** This flat with parts of its placement held. */
  public Flat withHeld(Held h) {
    return new Flat(
        id,
        role,
        ink,
        surround,
        windows,
        group,
        share,
        limits,
        h,
        unitLength,
        points,
        levelOn,
        mayFlow);
  }

  /** This flat with the real length of one drawing unit. */
  public Flat withUnitLength(Length real) {
    return new Flat(
        id, role, ink, surround, windows, group, share, limits, held, real, points, levelOn,
        mayFlow);
  }

  /** This flat with named points, lining up on the one named, or on its bottom for null. */
  public Flat withPoints(Map<String, Point> named, @Nullable String level) {
    return new Flat(
        id,
        role,
        ink,
        surround,
        windows,
        group,
        share,
        limits,
        held,
        unitLength,
        named,
        level,
        mayFlow);
  }

  /** This flat allowed, or not, to continue on a further sheet. */
  public Flat withMayFlow(boolean may) {
    return new Flat(
        id,
        role,
        ink,
        surround,
        windows,
        group,
        share,
        limits,
        held,
        unitLength,
        points,
        levelOn,
        may);
  }
}
