package dev.placket.layout.callout;

/** What a leader has at its spot, by ISO 128-2. */
public enum LeaderEnd {
  /** A dot: the leader ends within an outline. */
  DOT,
  /** A closed arrowhead: the leader ends on a line. */
  ARROW,
  /** Nothing: the leader ends at a ring or at another line. */
  NONE
}
