package dev.placket.packs.description;

import java.util.Collection;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Finds the known word that was probably meant. */
public final class NearestWord {
  private NearestWord() {}

  /**
   * The known word with the fewest letters put in, left out, changed or swapped with their
   * neighbour (Damerau 1964); the first of equals, null where more than two fifths would change.
   */
  public static @Nullable String of(String word, Collection<String> known) {
    String best = null;
    int least = Integer.MAX_VALUE;
    for (String each : known) {
      int distance = distance(word.toLowerCase(Locale.ROOT), each.toLowerCase(Locale.ROOT));
      if (distance < least && 5 * distance <= 2 * Math.max(word.length(), each.length())) {
        least = distance;
        best = each;
      }
    }
    return best;
  }

  static int distance(String a, String b) {
    if (Math.abs(a.length() - b.length()) > 20 || a.length() > 200) {
      return Integer.MAX_VALUE / 4;
    }
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        d[i][j] = i == 0 || j == 0 ? i + j : least(d, a, b, i, j);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int least(int[][] d, String a, String b, int i, int j) {
    int changed = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
    int best = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + changed);
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
  }
}
