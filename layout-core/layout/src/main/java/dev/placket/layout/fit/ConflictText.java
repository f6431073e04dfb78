package dev.placket.layout.fit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;

/** A conflict as one paragraph that a designer understands. */
public final class ConflictText {
  private static final double MM_PER_POINT = 25.4 / 72;

  /** The number of ways out that the text lists; the value has all of them. */
  private static final int TOLD = 6;

  private ConflictText() {}

  /**
   * What has no room and what would help, lengths in millimetres rounded up to a tenth, so that
   * what is said cures.
   *
   * @param conflict why nothing fits
   * @param names what to call the flat of an id
   */
  public static String of(Conflict conflict, UnaryOperator<String> names) {
    return of(conflict, names, points -> rounded(points * MM_PER_POINT, 1) + " mm");
  }

  /**
   * The same in another unit.
   *
   * @param length a length of so many points with its unit, rounded up so that the stated amount
   *     cures
   */
  public static String of(
      Conflict conflict, UnaryOperator<String> names, DoubleFunction<String> length) {
    List<String> flats = new ArrayList<>();
    for (Requirement r : conflict.requirements()) {
      if (r.kind() == Requirement.Kind.LEAST_SIZE) {
        r.of().forEach(id -> flats.add(names.apply(id)));
      }
    }
    String start = conflict.proven() ? "There is no room for " : "No room was found for ";
    String what = flats.isEmpty() ? "the flats" : flats.get(flats.size() - 1);
    String beside =
        flats.size() < 2 ? "" : " beside " + listed(flats.subList(0, flats.size() - 1), " and ");
    return start + what + beside + ": " + listed(ways(conflict, names, length), ", or ") + ".";
  }

  private static List<String> ways(
      Conflict conflict, UnaryOperator<String> names, DoubleFunction<String> length) {
    List<String> ways = new ArrayList<>();
    List<String> out = new ArrayList<>();
    for (Relief r : conflict.reliefs()) {
      if (r.kind() == Relief.Kind.LEAVE_OUT) {
        out.add(names.apply(r.of()));
      } else if (ways.size() < TOLD) {
        ways.add(way(r, names, length.apply(r.amount())));
      }
    }
    if (!out.isEmpty()) {
      ways.add("leave out " + listed(out, " or "));
    }
    if (ways.isEmpty()) {
      ways.add("leave some out, or use larger paper");
    }
    return ways;
  }

  private static String way(Relief r, UnaryOperator<String> names, String much) {
    Relief.Edge edge = r.edge();
    boolean across = edge == Relief.Edge.LEFT || edge == Relief.Edge.RIGHT;
    return switch (r.kind()) {
      case LOWER_LEAST_SIZE -> "reduce the minimum size of " + names.apply(r.of()) + " by " + much;
      case SHORTEN_CELL ->
          across
              ? "make the " + r.of() + " " + much + " narrower"
              : "shorten the " + r.of() + " by " + much;
      case NARROW_MARGIN -> "narrow the margin " + side(edge) + " by " + much;
      case LOWER_GAP -> "reduce the gap between flats by " + much;
      case LOWER_CLEARANCE -> "reduce the clearance to cells and rules by " + much;
      case CHANGE_RATIO ->
          "raise the ratio of " + names.apply(r.of()) + " by " + rounded(r.amount(), 3);
      case LEAVE_OUT -> "leave out " + names.apply(r.of());
      case LET_MOVE -> "let " + names.apply(r.of()) + " move";
      case TURN_OFF -> "turn off the rule '" + r.of() + "'";
    };
  }

  private static String side(Relief.@org.jspecify.annotations.Nullable Edge edge) {
    return edge == null
        ? ""
        : switch (edge) {
          case LEFT -> "on the left";
          case TOP -> "at the top";
          case RIGHT -> "on the right";
          case BOTTOM -> "at the bottom";
        };
  }

  private static String rounded(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.UP).toPlainString();
  }

  private static String listed(List<String> words, String last) {
    if (words.size() < 2) {
      return String.join("", words);
    }
    String most = String.join(", ", words.subList(0, words.size() - 1));
    return most + last + words.get(words.size() - 1);
  }
}
