package dev.placket.benchmarks.yardstick;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.NoOverlap2dConstraint;
import dev.placket.benchmarks.pages.ReferencePage;
import dev.placket.layout.units.Rect;

/**
 * OR-Tools CP-SAT, one worker, on the same problem: the largest common scale on a lattice.
 *
 * <p>The scale is k times a lattice step of 0.1 % of what the greedy rules reach; lengths are whole
 * numbers of 1e-5 pt. A flat is {@code (ceil(width * step) * k + gap)} across, so every answer of
 * CP-SAT is a valid one, and a scale that it refuses is impossible from {@code 1 + rounding} times
 * that scale on. The truth therefore lies in [k, (k_refused)(1 + rounding)] lattice steps.
 *
 * @param seconds the most that one call of the solver may take
 * @param counted the most of its own measure of work, which no clock has a part in
 */
public record CpSat(double seconds, double counted) {
  private static final double LATTICE = 1e-3;
  private static final double UNITS_PER_POINT = 1e5;
  private static final double MS_PER_SECOND = 1e3;

  /** Some seconds to a unit of work; nobody waits so long. */
  private static final double PATIENCE = 3600;

  /** Limited by the clock. */
  public CpSat(double seconds) {
    this(seconds, Double.MAX_VALUE);
  }

  /** Limited by work, so that an answer is the same however busy the machine is. */
  public static CpSat counting(double work) {
    return new CpSat(PATIENCE, work);
  }

  /**
   * What CP-SAT says.
   *
   * @param scale the largest scale found, 0 if none
   * @param bound no scale is larger; lattice and rounding counted in
   * @param proven whether the lattice is decided: found and refused are neighbours
   * @param ms wall time, milliseconds
   */
  public record Answer(double scale, double bound, boolean proven, double ms) {}

  /** Whether the native solver can be loaded on this machine. */
  public static boolean available() {
    try {
      Loader.loadNativeLibraries();
      return true;
    } catch (RuntimeException | UnsatisfiedLinkError e) {
      return false;
    }
  }

  /** One call that maximises k. */
  public Answer once(ReferencePage page) {
    long start = System.nanoTime();
    Lattice lattice = Lattice.of(page);
    Model model = new Model(page, lattice, 0, lattice.top());
    model.sat.maximize(model.k);
    CpSolver solver = solver(seconds);
    CpSolverStatus status = solver.solve(model.sat);
    boolean found = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
    long best = found ? Math.round(solver.objectiveValue()) : 0;
    long least = found ? (long) Math.floor(solver.bestObjectiveBound() + LATTICE) : lattice.top();
    return lattice.answer(best, least + 1, status == CpSolverStatus.OPTIMAL, start);
  }

  /** Halves on k, each time asking whether it fits. */
  public Answer halving(ReferencePage page) {
    long start = System.nanoTime();
    Lattice lattice = Lattice.of(page);
    long fits = 0;
    long refused = lattice.top() + 1;
    double left = seconds;
    while (refused - fits > 1 && left > 0) {
      long middle = (fits + refused) / 2;
      CpSolverStatus status = solver(left).solve(new Model(page, lattice, middle, middle).sat);
      if (status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE) {
        fits = middle;
      } else if (status == CpSolverStatus.INFEASIBLE) {
        refused = middle;
      } else {
        break;
      }
      left = seconds - (System.nanoTime() - start) / 1e9;
    }
    return lattice.answer(fits, refused, refused - fits == 1, start);
  }

  private CpSolver solver(double most) {
    CpSolver solver = new CpSolver();
    solver.getParameters().setNumWorkers(1).setMaxTimeInSeconds(most).setRandomSeed(1);
    solver.getParameters().setMaxDeterministicTime(counted);
    return solver;
  }

  /**
   * The numbers in which CP-SAT thinks.
   *
   * @param step one lattice step of the scale
   * @param top the most steps that area and widest flat allow
   * @param rounding the largest share by which a flat was rounded up
   */
  record Lattice(double step, long top, double rounding) {
    static Lattice of(ReferencePage page) {
      double reached = Yardstick.GREEDY.get(2).pack(page).scale();
      double bound = ScaleSearch.bound(page);
      double step = LATTICE * (reached > 0 ? reached : bound / 2);
      double rounding = 0;
      for (ReferencePage.Size s : page.flats()) {
        rounding =
            Math.max(rounding, 1 / (Math.min(s.width(), s.height()) * step * UNITS_PER_POINT));
      }
      return new Lattice(step, (long) Math.floor(bound / step) + 1, rounding);
    }

    Answer answer(long fits, long refused, boolean proven, long start) {
      double ms = (System.nanoTime() - start) / 1e9 * MS_PER_SECOND;
      return new Answer(fits * step, refused * step * (1 + rounding), proven, ms);
    }
  }

  private static final class Model {
    final CpModel sat = new CpModel();
    final IntVar k;

    Model(ReferencePage page, Lattice lattice, long from, long to) {
      Room room = Room.of(page, 0);
      k = sat.newIntVar(from, to, "k");
      NoOverlap2dConstraint apart = sat.addNoOverlap2D();
      long right = down(room.inside().right());
      long bottom = down(room.inside().bottom());
      for (Rect w : Disjoint.of(room.walls())) {
        apart.addRectangle(
            sat.newFixedInterval(down(w.left()), up(w.width()), "x"),
            sat.newFixedInterval(down(w.top()), up(w.height()), "y"));
      }
      for (ReferencePage.Size s : page.flats()) {
        long gap = up(page.gap());
        apart.addRectangle(
            side(up(s.width() * lattice.step()), gap, right),
            side(up(s.height() * lattice.step()), gap, bottom));
      }
    }

    private IntervalVar side(long perStep, long gap, long room) {
      IntVar start = sat.newIntVar(0, room, "start");
      IntVar end = sat.newIntVar(0, room, "end");
      return sat.newIntervalVar(start, LinearExpr.affine(k, perStep, gap), end, "side");
    }

    private static long up(double points) {
      return (long) Math.ceil(points * UNITS_PER_POINT - LATTICE);
    }

    private static long down(double points) {
      return (long) Math.floor(points * UNITS_PER_POINT + LATTICE);
    }
  }
}
