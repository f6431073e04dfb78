package dev.placket.layout.fit;

import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Targets;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Rule;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.sheet.Window;
import dev.placket.layout.units.Box;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A first, plain placement: halving on the scale, each flat at the topmost, leftmost free spot of a
 * single window.
 */
final class Rough {
  private static final int HALVINGS = 40;
  private static final MathContext TWELVE_DOWN = new MathContext(12, RoundingMode.DOWN);

  private final FitRequest request;
  private final Sheet sheet;
  private final double[] atOne;
  private long steps;

  Rough(FitRequest request) {
    this.request = request;
    this.sheet = request.sheet();
    this.atOne = Targets.scales(request.flats());
  }

  Outcome run() {
    double low = 0;
    double high = bound();
    List<Placement> best = null;
    for (int i = 0; i < HALVINGS; i++) {
      double t = (low + high) / 2;
      List<Placement> tried = tryAt(t);
      if (tried == null) {
        high = t;
      } else {
        low = t;
        best = tried;
      }
    }
    if (best == null) {
      return new Conflict(List.of(), List.of(), false, false, steps);
    }
    BigDecimal scale = new BigDecimal(low).round(TWELVE_DOWN);
    return new Fit(best, new Proof(scale, bound(), steps, false), List.of());
  }

  private double bound() {
    double best = Double.POSITIVE_INFINITY;
    for (int i = 0; i < atOne.length; i++) {
      Flat f = request.flats().get(i);
      best = Math.min(best, sheet.inside().width() / (f.ink().width() * atOne[i]));
      best = Math.min(best, sheet.inside().height() / (f.ink().height() * atOne[i]));
    }
    return best;
  }

  private @Nullable List<Placement> tryAt(double t) {
    List<Placement> done = new ArrayList<>();
    List<Box> taken = new ArrayList<>();
    for (int i = 0; i < atOne.length; i++) {
      Flat f = request.flats().get(i);
      double s = scale(f, atOne[i] * t);
      Box spot = s > 0 ? spot(f, s, taken) : null;
      if (spot == null) {
        return null;
      }
      taken.add(spot);
      done.add(placement(f, s, spot));
    }
    return done;
  }

  private static double scale(Flat f, double wanted) {
    double longest = f.ink().longestSide();
    return Math.max(f.limits().least().pt(), Math.min(f.limits().greatestPt(), wanted * longest))
        / longest;
  }

  private @Nullable Box spot(Flat f, double s, List<Box> taken) {
    double sides = f.surround().left().pt() + f.surround().right().pt();
    double w = Math.max(s * f.ink().width() + sides, f.surround().leastWidth().pt());
    double h = s * f.ink().height() + f.surround().top().pt() + f.surround().bottom().pt();
    double clear = request.spacing().clearance().pt();
    double gap = request.spacing().gap().pt();
    List<Box> walls = new ArrayList<>();
    for (LabelledCell c : sheet.labelledCells()) {
      walls.add(c.box().grown(clear));
    }
    for (Rule r : sheet.rules()) {
      walls.add(r.ink().grown(clear));
    }
    taken.forEach(b -> walls.add(b.grown(gap)));
    Box best = null;
    for (Window window : sheet.windows()) {
      if (!f.windows().isEmpty() && !f.windows().contains(window.name())) {
        continue;
      }
      Box room = sheet.box(window);
      for (double x : edges(room.left(), walls, true)) {
        for (double y : edges(room.top(), walls, false)) {
          steps++;
          Box at = Box.ofSize(x, y, w, h);
          boolean free = room.contains(at) && walls.stream().noneMatch(at::overlaps);
          if (free && (best == null || y < best.top() || (y == best.top() && x < best.left()))) {
            best = at;
          }
        }
      }
    }
    return best;
  }

  private static List<Double> edges(double first, List<Box> walls, boolean onX) {
    List<Double> edges = new ArrayList<>();
    edges.add(first + 1e-5);
    walls.forEach(w -> edges.add((onX ? w.right() : w.bottom()) + 1e-5));
    return edges;
  }

  private Placement placement(Flat f, double s, Box spot) {
    double sides = f.surround().left().pt() + f.surround().right().pt();
    double spare = spot.width() - s * f.ink().width() - sides;
    double left = spot.left() + f.surround().left().pt() + spare / 2;
    double top = spot.top() + f.surround().top().pt();
    return new Placement(
        f.id(),
        new BigDecimal(s).round(TWELVE_DOWN),
        new BigDecimal(left).setScale(6, RoundingMode.HALF_EVEN),
        new BigDecimal(top).setScale(6, RoundingMode.HALF_EVEN),
        false);
  }
}
