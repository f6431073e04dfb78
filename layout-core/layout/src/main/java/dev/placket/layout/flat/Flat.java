package dev.placket.layout.flat;

import dev.placket.layout.units.Length;
import dev.placket.layout.units.PlanePoint;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * One picture to be placed: what it is, how large its ink is by nature, and what binds its size and
 * place.
 *
 * <p>Start with {@link #of} and state what differs from the defaults of its role with the {@code
 * with} methods. A value: equal parts are equal flats.
 */
public final class Flat {
  private final String id;
  private final Role role;
  private final InkedBox ink;
  private final Surround surround;
  private final List<String> windows;
  private final @Nullable ScaleGroup group;
  private final double share;
  private final Limits limits;
  private final Held held;
  private final @Nullable Length unitLength;
  private final Map<String, PlanePoint> points;
  private final @Nullable String levelOn;
  private final boolean mayFlow;
  private final @Nullable String list;

  private Flat(Builder b) {
    id = b.id;
    role = b.role;
    ink = b.ink;
    surround = b.surround;
    windows = List.copyOf(b.windows);
    group = b.group;
    share = b.share;
    limits = b.limits;
    held = b.held;
    unitLength = b.unitLength;
    points = Collections.unmodifiableMap(new TreeMap<>(b.points));
    levelOn = b.levelOn;
    mayFlow = b.mayFlow;
    list = b.list;
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
    return new Flat(new Builder(id, role, ink));
  }

  /** Unique among the flats of a sheet. */
  public String id() {
    return id;
  }

  /** What it is to the sheet. */
  public Role role() {
    return role;
  }

  /** Its drawing bounds, in its own units. */
  public InkedBox ink() {
    return ink;
  }

  /** The room round the ink that does not grow with it. */
  public Surround surround() {
    return surround;
  }

  /** Names of the windows it may use; empty for all of them. */
  public List<String> windows() {
    return windows;
  }

  /** Its scale group, or null if its target size is a share of the front's. */
  public @Nullable ScaleGroup group() {
    return group;
  }

  /** Without a group: the longest side to aim at, as a share of the front's; above zero. */
  public double share() {
    return share;
  }

  /** Least and greatest printed size. */
  public Limits limits() {
    return limits;
  }

  /** What must not move. */
  public Held held() {
    return held;
  }

  /** The real length of one drawing unit, or null if the drawing states none. */
  public @Nullable Length unitLength() {
    return unitLength;
  }

  /**
   * Named spots in drawing units, for levels and callouts; element ids of the drawing among them.
   */
  public Map<String, PlanePoint> points() {
    return points;
  }

  /** The name of the point on whose height views line up, or null for the bottom of the ink. */
  public @Nullable String levelOn() {
    return levelOn;
  }

  /** Whether it may continue on a further sheet. */
  public boolean mayFlow() {
    return mayFlow;
  }

  /**
   * The list that it belongs to, whose flats are read in their order, whatever their roles, as
   * colourways of one drawing; null for none. Swatches and steps without one are lists of their
   * own.
   */
  public @Nullable String list() {
    return list;
  }

  /** The height, in drawing units, on which this flat lines up with other views. */
  public double levelHeight() {
    PlanePoint p = levelOn == null ? null : points.get(levelOn);
    return p == null ? ink.bottom() : p.y();
  }

  /** This flat with another room round its ink. */
  public Flat withSurround(Surround s) {
    Builder b = new Builder(this);
    b.surround = s;
    return new Flat(b);
  }

  /** This flat kept to the windows named. */
  public Flat withWindows(List<String> names) {
    Builder b = new Builder(this);
    b.windows = names;
    return new Flat(b);
  }

  /** This flat in a scale group, at a ratio of its common scale. */
  public Flat withGroup(String name, double ratio) {
    Builder b = new Builder(this);
    b.group = new ScaleGroup(name, ratio);
    return new Flat(b);
  }

  /**
   * This flat aiming at another share of the front's longest side.
   *
   * @throws IllegalArgumentException naming the flat, if the share is not above zero
   */
  public Flat withShare(double s) {
    Builder b = new Builder(this);
    b.share = s;
    return new Flat(b);
  }

  /** This flat with other limits on its printed size. */
  public Flat withLimits(Limits l) {
    Builder b = new Builder(this);
    b.limits = l;
    return new Flat(b);
  }

  /** This flat with parts of its placement held. */
  public Flat withHeld(Held h) {
    Builder b = new Builder(this);
    b.held = h;
    return new Flat(b);
  }

  /** This flat with the real length of one drawing unit. */
  public Flat withUnitLength(Length real) {
    Builder b = new Builder(this);
    b.unitLength = real;
    return new Flat(b);
  }

  /**
   * This flat with named points, lining up on the one named, or on its bottom for null.
   *
   * @throws IllegalArgumentException naming the flat, if {@code level} is no point of it
   */
  public Flat withPoints(Map<String, PlanePoint> named, @Nullable String level) {
    Builder b = new Builder(this);
    b.points = named;
    b.levelOn = level;
    return new Flat(b);
  }

  /** This flat allowed, or not, to continue on a further sheet. */
  public Flat withMayFlow(boolean may) {
    Builder b = new Builder(this);
    b.mayFlow = may;
    return new Flat(b);
  }

  /** This flat in a list whose flats are read in their order; in none for null. */
  public Flat withList(@Nullable String name) {
    Builder b = new Builder(this);
    b.list = name;
    return new Flat(b);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Flat that && parts().equals(that.parts());
  }

  @Override
  public int hashCode() {
    return parts().hashCode();
  }

  @Override
  public String toString() {
    return "Flat" + parts();
  }

  private List<@Nullable Object> parts() {
    return Arrays.asList(
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
        mayFlow,
        list);
  }

  /** The parts while they are being stated. */
  private static final class Builder {
    final String id;
    final Role role;
    final InkedBox ink;
    Surround surround = Surround.NONE;
    List<String> windows = List.of();
    @Nullable ScaleGroup group;
    double share;
    Limits limits = Limits.NONE;
    Held held = Held.NOTHING;
    @Nullable Length unitLength;
    Map<String, PlanePoint> points = Map.of();
    @Nullable String levelOn;
    boolean mayFlow;
    @Nullable String list;

    Builder(String id, Role role, InkedBox ink) {
      this.id = id;
      this.role = role;
      this.ink = ink;
      share = role.share();
    }

    Builder(Flat flat) {
      this(flat.id, flat.role, flat.ink);
      surround = flat.surround;
      windows = flat.windows;
      group = flat.group;
      share = flat.share;
      limits = flat.limits;
      held = flat.held;
      unitLength = flat.unitLength;
      points = flat.points;
      levelOn = flat.levelOn;
      mayFlow = flat.mayFlow;
      list = flat.list;
    }
  }
}
