package dev.placket.layout.solve;

import dev.placket.layout.fit.Conflict;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Order;
import dev.placket.layout.fit.Outcome;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.FlatShape;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Tries every choice of footprints and keeps the one with the largest common scale, or one that the
 * lists name earlier and that is hardly smaller.
 */
public final class ChooseShapes {
  /** Most choices that are tried. */
  public static final int MOST = 729;

  /** Most choices that are offered. */
  private static final int OFFERED = 3;

  /** Scales that differ by less are one. */
  private static final double ROUNDING = 1e-9;

  /** A choice that fits. */
  private record Found(int[] choice, double scale) {
    /** How far down the lists it goes. */
    int depth() {
      return java.util.Arrays.stream(choice).sum();
    }
  }

  private final FitRequest request;
  private final double share;
  private final List<String> ids = new ArrayList<>();
  private final List<List<FlatShape>> lists = new ArrayList<>();

  /**
   * A choice.
   *
   * @param request the request with these footprints
   * @param shapes their numbers by the flats' ids
   * @param bound no choice has a larger common scale; 0 where none of them fits, proven
   */
  public record Choice(FitRequest request, Map<String, Integer> shapes, double bound) {
    /** Copies the map. */
    public Choice {
      shapes = Map.copyOf(shapes);
    }
  }

  private ChooseShapes(FitRequest request, Map<String, List<FlatShape>> shapes, double share) {
    this.request = request;
    this.share = share;
    for (Flat flat : request.flats()) {
      List<FlatShape> its = shapes.get(flat.id());
      if (its != null) {
        ids.add(flat.id());
        lists.add(its);
      }
    }
  }

  /**
   * The footprints with which the common scale is largest, or smaller by the share at most: those
   * that the lists name first, a few of them. One fit for each choice.
   *
   * @param request flats and sheet
   * @param shapes one or more footprints for some of the flats, by id
   * @param share how much of the scale may be given up for footprints that are named earlier
   * @throws IllegalArgumentException if a list is empty, none of a list suits its flat, or there
   *     are more than {@link #MOST} choices
   */
  public static List<Choice> of(
      FitRequest request, Map<String, List<FlatShape>> shapes, double share) {
    return new ChooseShapes(request, shapes, share).run();
  }

  private List<Choice> run() {
    long choices = 1;
    for (List<FlatShape> list : lists) {
      choices *= list.size();
      if (choices == 0 || choices > MOST) {
        throw new IllegalArgumentException("a list is empty, or over " + MOST + " choices");
      }
    }
    List<Found> found = new ArrayList<>();
    double bound = 0;
    int[] first = null;
    for (int number = 0; number < choices; number++) {
      int[] choice = choice(number);
      FitRequest its = with(choice);
      if (its == null) {
        continue;
      }
      first = first == null ? choice : first;
      FitRequest plain = its.withOrder(Order.NONE).withGrowth(false);
      Outcome outcome = Fitter.solve(plain, () -> false, false);
      bound = Math.max(bound, bound(outcome));
      if (outcome instanceof Fit fit) {
        found.add(new Found(choice, fit.proof().scale().doubleValue()));
      }
    }
    if (first == null) {
      throw new IllegalArgumentException("no footprint suits the greatest size of its flat");
    }
    double most = found.stream().mapToDouble(Found::scale).max().orElse(0);
    double least = most * (1 - Math.max(share, ROUNDING));
    List<int[]> chosen =
        found.stream()
            .filter(f -> f.scale() >= least)
            .sorted(Comparator.comparingInt(Found::depth).thenComparing(f -> -f.scale()))
            .map(Found::choice)
            .limit(OFFERED)
            .toList();
    List<Choice> offered = new ArrayList<>();
    for (int[] choice : chosen.isEmpty() ? List.of(first) : chosen) {
      offered.add(new Choice(Objects.requireNonNull(with(choice)), numbers(choice), bound));
    }
    return offered;
  }

  private static double bound(Outcome outcome) {
    if (outcome instanceof Fit fit) {
      return fit.proof().bound();
    }
    return ((Conflict) outcome).proven() ? 0 : Double.POSITIVE_INFINITY;
  }

  /** The digits of a number, one for each list: the last list counts fastest. */
  private int[] choice(int number) {
    int[] choice = new int[lists.size()];
    int rest = number;
    for (int i = lists.size() - 1; i >= 0; i--) {
      choice[i] = rest % lists.get(i).size();
      rest /= lists.get(i).size();
    }
    return choice;
  }

  private @Nullable FitRequest with(int[] choice) {
    List<Flat> flats = new ArrayList<>();
    for (Flat flat : request.flats()) {
      int i = ids.indexOf(flat.id());
      FlatShape shape = i < 0 ? null : lists.get(i).get(choice[i]);
      if (shape != null && !shape.suits(flat)) {
        return null;
      }
      flats.add(shape == null ? flat : shape.of(flat));
    }
    return request.withFlats(flats);
  }

  private Map<String, Integer> numbers(int[] choice) {
    Map<String, Integer> numbers = new TreeMap<>();
    for (int i = 0; i < choice.length; i++) {
      numbers.put(ids.get(i), choice[i]);
    }
    return numbers;
  }
}
