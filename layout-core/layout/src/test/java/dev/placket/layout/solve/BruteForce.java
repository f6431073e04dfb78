package dev.placket.layout.solve;

import java.util.List;

/**
 * The largest common scale of a small sheet by trying every relative order: each pair of flats, and
 * each flat with each closed place, in all four ways. Shares nothing with the search under test but
 * the question.
 */
final class BruteForce {
  private static final double SLACK = 1e-9;
  private static final int LEFT = 0;
  private static final int RIGHT = 1;
  private static final int ABOVE = 2;

  private final SmallSheet sheet;
  private final int n;
  private final double[] allowed;
  private final int[][] pairs;
  private final int[] way;
  private double best;

  private BruteForce(SmallSheet sheet) {
    this.sheet = sheet;
    this.n = sheet.items().size();
    this.allowed = allowed();
    int count = n * (n - 1) / 2;
    for (List<double[]> walls : sheet.walls()) {
      count += walls.size();
    }
    pairs = new int[count][];
    way = new int[count];
    int k = 0;
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < i; j++) {
        pairs[k++] = new int[] {j, i, -1};
      }
      for (int w = 0; w < sheet.walls().get(i).size(); w++) {
        pairs[k++] = new int[] {i, -1, w};
      }
    }
  }

  /** The largest common scale, or NaN if nothing fits at any. */
  static double largest(SmallSheet sheet) {
    BruteForce force = new BruteForce(sheet);
    if (Double.isNaN(force.allowed[0])) {
      return Double.NaN;
    }
    force.best = Double.NaN;
    force.dive(0);
    return force.best;
  }

  /** The t from which and up to which limits and rules agree, by a fine walk and halving. */
  private double[] allowed() {
    double first = Double.NaN;
    double last = Double.NaN;
    double step = Math.pow(10, 0.0005);
    for (double t = 1e-4; t < 1e3; t *= step) {
      if (isAllowed(t)) {
        first = Double.isNaN(first) ? t : first;
        last = t;
      }
    }
    if (Double.isNaN(first)) {
      return new double[] {first, last};
    }
    double from = first < 1.001e-4 ? first : edge(first, first / step);
    double to = last > 0.99e3 ? last : edge(last, last * step);
    // The common scale ends where every flat is at its greatest.
    double end = 0;
    for (SmallSheet.Item item : sheet.items()) {
      end = Math.max(end, item.greatest() / item.perT());
    }
    return new double[] {Math.min(from, end), Math.min(to, end)};
  }

  private double edge(double in, double out) {
    double good = in;
    double bad = out;
    for (int k = 0; k < 60; k++) {
      double mid = (good + bad) / 2;
      if (isAllowed(mid)) {
        good = mid;
      } else {
        bad = mid;
      }
    }
    return good;
  }

  private boolean isAllowed(double t) {
    if (!sheet.rules()) {
      return true;
    }
    SmallSheet.Item front = sheet.items().get(0);
    double most = front.scale(t) * front.longest();
    for (int i = 1; i < n; i++) {
      SmallSheet.Item item = sheet.items().get(i);
      boolean sameGroup = sheet.request().flats().get(i).group() != null;
      if (!sameGroup && item.scale(t) * item.longest() > most * (1 + 1e-12)) {
        return false;
      }
    }
    return true;
  }

  private void dive(int k) {
    double least = Double.isNaN(best) ? allowed[0] : best * (1 + SLACK);
    if (least > allowed[1] || !fits(k, least)) {
      return;
    }
    if (k == pairs.length) {
      best = stretched(least);
      return;
    }
    for (int w = 0; w < 4; w++) {
      if (isOpen(pairs[k], w)) {
        way[k] = w;
        dive(k + 1);
      }
    }
  }

  /** The front stands left of or above each back. */
  private boolean isOpen(int[] pair, int w) {
    boolean bound =
        sheet.rules() && pair[2] < 0 && pair[0] == 0 && sheet.items().get(pair[1]).back();
    return !bound || w == LEFT || w == ABOVE;
  }

  private double stretched(double least) {
    if (fits(pairs.length, allowed[1])) {
      return allowed[1];
    }
    double good = least;
    double bad = allowed[1];
    for (int k = 0; k < 80 && bad - good > 1e-11 * good; k++) {
      double mid = (good + bad) / 2;
      if (fits(pairs.length, mid)) {
        good = mid;
      } else {
        bad = mid;
      }
    }
    return good;
  }

  /** Whether the first so many relations can hold at t. */
  private boolean fits(int count, double t) {
    return fitsOn(true, count, t) && fitsOn(false, count, t);
  }

  private boolean fitsOn(boolean x, int count, double t) {
    double[] size = new double[n];
    double[] at = new double[n];
    for (int i = 0; i < n; i++) {
      SmallSheet.Item item = sheet.items().get(i);
      double scale = item.scale(t);
      size[i] =
          x
              ? Math.max(item.leastWidth(), item.width() * scale)
              : item.height() * scale + item.strip();
      at[i] = sheet.frame()[x ? 0 : 1];
    }
    for (int round = 0; round <= n + 1; round++) {
      boolean moved = pushHeld(x, at);
      for (int k = 0; k < count; k++) {
        moved |= push(x, k, size, at);
      }
      if (!moved) {
        return keepsEnds(x, count, size, at);
      }
    }
    return false;
  }

  private boolean pushHeld(boolean x, double[] at) {
    boolean moved = false;
    for (int i = 0; i < n; i++) {
      double held = x ? sheet.items().get(i).heldX() : sheet.items().get(i).heldY();
      if (at[i] < held - 1e-12) {
        at[i] = held;
        moved = true;
      }
    }
    return moved;
  }

  private boolean push(boolean x, int k, double[] size, double[] at) {
    int[] pair = pairs[k];
    if ((way[k] < ABOVE) != x) {
      return false;
    }
    boolean firstBefore = way[k] == LEFT || way[k] == ABOVE;
    if (pair[2] >= 0) {
      double far = wall(pair)[x ? 2 : 3];
      if (!firstBefore && at[pair[0]] < far - 1e-12) {
        at[pair[0]] = far;
        return true;
      }
      return false;
    }
    int a = firstBefore ? pair[0] : pair[1];
    int b = firstBefore ? pair[1] : pair[0];
    double to = at[a] + size[a] + sheet.gaps()[a][b];
    if (at[b] < to - 1e-12) {
      at[b] = to;
      return true;
    }
    return false;
  }

  private boolean keepsEnds(boolean x, int count, double[] size, double[] at) {
    for (int i = 0; i < n; i++) {
      double held = x ? sheet.items().get(i).heldX() : sheet.items().get(i).heldY();
      if (at[i] + size[i] > sheet.frame()[x ? 2 : 3] + SLACK || at[i] > held + SLACK) {
        return false;
      }
    }
    for (int k = 0; k < count; k++) {
      boolean before = way[k] == LEFT || way[k] == ABOVE;
      if (pairs[k][2] >= 0 && before && (way[k] < ABOVE) == x) {
        int i = pairs[k][0];
        if (at[i] + size[i] > wall(pairs[k])[x ? 0 : 1] + SLACK) {
          return false;
        }
      }
    }
    return true;
  }

  private double[] wall(int[] pair) {
    return sheet.walls().get(pair[0]).get(pair[2]);
  }
}
