package dev.placket.pictures.path;

import dev.placket.layout.units.PlanePoint;
import java.util.ArrayList;
import java.util.List;

/**
 * A path of a drawing, to be measured along. Lengths are in drawing units and exact but for
 * rounding: speeds are integrated by Gauss and Legendre's rule, on ever smaller parts until two
 * orders of halving agree.
 */
public final class DrawnPath {
  /** Steps of a curve where it is drawn, or looked at, as straight parts. */
  private static final int STEPS = 32;

  /** Two results that differ by less, as a share, agree. */
  private static final double AGREED = 1e-13;

  private static final int MOST_HALVES = 24;

  /** Of the rule with five points: places from the middle, and their weights. */
  private static final double[] PLACES = {
    0, Math.sqrt(5 - 2 * Math.sqrt(10.0 / 7)) / 3, Math.sqrt(5 + 2 * Math.sqrt(10.0 / 7)) / 3
  };

  private static final double[] WEIGHTS = {
    128.0 / 225, (322 + 13 * Math.sqrt(70)) / 900, (322 - 13 * Math.sqrt(70)) / 900
  };

  private final List<PathPiece> pieces;
  private final boolean closed;

  DrawnPath(List<PathPiece> pieces, boolean closed) {
    this.pieces = List.copyOf(pieces);
    this.closed = closed;
  }

  /**
   * Part of a path.
   *
   * @param way it, as short straight steps
   * @param length its length, exactly
   * @param off how far the farther of its two spots lies from the path
   */
  public record Part(List<PlanePoint> way, double length, double off) {
    /** Copies the list. */
    public Part {
      way = List.copyOf(way);
    }
  }

  /** A place on the path: the number of its piece and the parameter, and how far off a spot is. */
  private record Place(int piece, double t, double off) {
    boolean isAfter(Place other) {
      return piece > other.piece || piece == other.piece && t > other.t;
    }
  }

  /** The length of all of it. */
  public double length() {
    return pieces.stream().mapToDouble(p -> length(p, 0, 1)).sum();
  }

  /**
   * The part between the places that are nearest to two spots; of a closed path the shorter way.
   *
   * @throws IllegalStateException of a path without a piece, which none that is drawn is
   */
  public Part between(PlanePoint from, PlanePoint to) {
    Place a = nearest(from);
    Place b = nearest(to);
    boolean back = a.isAfter(b);
    Part direct = back ? part(b, a) : part(a, b);
    Part taken = back ? reversed(direct) : direct;
    if (closed) {
      Part round = back ? round(a, b) : reversed(round(b, a));
      taken = round.length() < taken.length() ? round : taken;
    }
    return new Part(taken.way(), taken.length(), Math.max(a.off(), b.off()));
  }

  /** From a place to the end, and from the beginning to an earlier place. */
  private Part round(Place late, Place early) {
    Part first = part(late, new Place(pieces.size() - 1, 1, 0));
    Part second = part(new Place(0, 0, 0), early);
    List<PlanePoint> way = new ArrayList<>(first.way());
    way.addAll(second.way());
    return new Part(way, first.length() + second.length(), 0);
  }

  private static Part reversed(Part part) {
    List<PlanePoint> back = new ArrayList<>(part.way());
    java.util.Collections.reverse(back);
    return new Part(back, part.length(), part.off());
  }

  private Part part(Place a, Place b) {
    List<PlanePoint> way = new ArrayList<>();
    double length = 0;
    way.add(pieces.get(a.piece()).at(a.t()));
    for (int i = a.piece(); i <= b.piece(); i++) {
      PathPiece piece = pieces.get(i);
      double from = i == a.piece() ? a.t() : 0;
      double to = i == b.piece() ? b.t() : 1;
      int steps = piece.straight() ? 1 : STEPS;
      for (int k = 1; k <= steps; k++) {
        way.add(piece.at(from + (to - from) * k / steps));
      }
      length += length(piece, from, to);
    }
    return new Part(way, length, 0);
  }

  private Place nearest(PlanePoint spot) {
    Place best = null;
    for (int i = 0; i < pieces.size(); i++) {
      PathPiece piece = pieces.get(i);
      int coarse = 0;
      for (int k = 1; k <= STEPS; k++) {
        if (off(piece, (double) k / STEPS, spot) < off(piece, (double) coarse / STEPS, spot)) {
          coarse = k;
        }
      }
      double t =
          refined(
              piece,
              spot,
              Math.max(0, (coarse - 1.0) / STEPS),
              Math.min(1, (coarse + 1.0) / STEPS));
      double off = off(piece, t, spot);
      best = best == null || off < best.off() ? new Place(i, t, off) : best;
    }
    if (best == null) {
      throw new IllegalStateException("a path without a piece");
    }
    return best;
  }

  private static double refined(PathPiece piece, PlanePoint spot, double least, double most) {
    double from = least;
    double to = most;
    for (int i = 0; i < 120; i++) {
      double one = from + (to - from) / 3;
      double other = to - (to - from) / 3;
      if (off(piece, one, spot) <= off(piece, other, spot)) {
        to = other;
      } else {
        from = one;
      }
    }
    double t = (from + to) / 2;
    // A spot at an end of the piece is its end, exactly.
    for (double end : new double[] {0, 1}) {
      t = off(piece, end, spot) <= off(piece, t, spot) ? end : t;
    }
    return t;
  }

  private static double off(PathPiece piece, double t, PlanePoint spot) {
    PlanePoint at = piece.at(t);
    double x = at.x() - spot.x();
    double y = at.y() - spot.y();
    return Math.sqrt(x * x + y * y);
  }

  private static double length(PathPiece piece, double from, double to) {
    return piece.straight()
        ? piece.speed(0) * (to - from)
        : halved(piece, from, to, rule(piece, from, to), 0);
  }

  private static double halved(PathPiece piece, double from, double to, double whole, int halves) {
    double middle = (from + to) / 2;
    double first = rule(piece, from, middle);
    double second = rule(piece, middle, to);
    double both = first + second;
    if (Math.abs(both - whole) <= AGREED * Math.abs(both) || halves == MOST_HALVES) {
      return both;
    }
    return halved(piece, from, middle, first, halves + 1)
        + halved(piece, middle, to, second, halves + 1);
  }

  private static double rule(PathPiece piece, double from, double to) {
    double middle = (from + to) / 2;
    double half = (to - from) / 2;
    double sum = WEIGHTS[0] * piece.speed(middle);
    for (int i = 1; i < PLACES.length; i++) {
      double off = half * PLACES[i];
      sum += WEIGHTS[i] * (piece.speed(middle - off) + piece.speed(middle + off));
    }
    return half * sum;
  }
}
