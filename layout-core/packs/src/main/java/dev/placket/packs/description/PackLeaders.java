package dev.placket.packs.description;

/** How the leaders of a sheet's callouts run. */
public enum PackLeaders {
  /** Inclined where they can be drawn without crossings, else straight. */
  AUTO,
  /** At 30, 45 or 60 degrees, then level. */
  INCLINED,
  /** In one straight line. */
  STRAIGHT,
  /** Callouts are not drawn; {@code fit.json} has their spots. */
  NONE
}
