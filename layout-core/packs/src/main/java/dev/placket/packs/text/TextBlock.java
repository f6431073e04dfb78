package dev.placket.packs.text;

import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Text set into a box: it wraps, then shrinks step by step.
 *
 * @param runs its pieces
 * @param step the height of capitals that was taken
 */
public record TextBlock(List<TextRun> runs, Length step) {
  /** From the rules of a cell to its text. */
  public static final Length INSET = Length.mm(1.5);

  /** From a cell's lower edge to the baseline of its last line: room for descenders. */
  public static final Length FOOT = Length.mm(2);

  /** Where lines begin. */
  public enum Align {
    /** At the left. */
    LEFT,
    /** In the middle. */
    CENTRE,
    /** So that they end at the right. */
    RIGHT
  }

  /** Where the block of lines stands. */
  public enum Stand {
    /** Its first line at the top. */
    TOP,
    /** Its last line at the foot. */
    FOOT
  }

  /** Copies the list. */
  public TextBlock {
    runs = List.copyOf(runs);
  }

  /**
   * Sets a text.
   *
   * @param box a cell's edges, or what a caption leaves of them
   * @param steps heights of capitals to try, the preferred first
   * @return null if it does not go in at the last step
   */
  public static @Nullable TextBlock fit(
      String text, Rect box, List<Length> steps, Align align, Stand stand, Lettering lettering) {
    if (text.isBlank()) {
      return new TextBlock(List.of(), steps.get(0));
    }
    double room = box.width() - 2 * INSET.pt();
    for (Length step : steps) {
      List<String> lines = lettering.wrap(text, step, room);
      double leading = lettering.leading(step).pt();
      double rise = Lettering.rise(lines.get(0), step).pt();
      double height = height(lines, step, lettering);
      boolean across = lines.stream().allMatch(l -> lettering.width(l, step) <= room);
      double air = stand == Stand.FOOT ? FOOT.pt() : INSET.pt() + FOOT.pt();
      if (across && height <= box.height() - air) {
        double first =
            stand == Stand.FOOT
                ? box.bottom() - FOOT.pt() - (lines.size() - 1) * leading
                : box.top() + INSET.pt() + rise + step.pt();
        List<TextRun> runs = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
          double spare = room - lettering.width(lines.get(i), step);
          double left = box.left() + INSET.pt() + share(align) * spare;
          runs.addAll(lettering.line(lines.get(i), left, first + i * leading, step, false));
        }
        return new TextBlock(runs, step);
      }
    }
    return null;
  }

  /** How high lines are from the top of the first to the last baseline, in points. */
  public static double height(List<String> lines, Length step, Lettering lettering) {
    double rise = Lettering.rise(lines.get(0), step).pt();
    return rise + step.pt() + (lines.size() - 1) * lettering.leading(step).pt();
  }

  private static double share(Align align) {
    return switch (align) {
      case LEFT -> 0;
      case CENTRE -> 0.5;
      case RIGHT -> 1;
    };
  }
}
