package dev.placket.packs.flats;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.Locale;

/** Orders names as people do: runs of digits by their number, so that step-2 precedes step-10. */
public final class NaturalOrder implements Comparator<String> {
  public static final NaturalOrder NAMES = new NaturalOrder();

  private NaturalOrder() {}

  @Override
  public int compare(String a, String b) {
    int i = 0;
    int j = 0;
    String x = a.toLowerCase(Locale.ROOT);
    String y = b.toLowerCase(Locale.ROOT);
    while (i < x.length() && j < y.length()) {
      int endX = runEnd(x, i);
      int endY = runEnd(y, j);
      int c = compareRuns(x.substring(i, endX), y.substring(j, endY));
      if (c != 0) {
        return c;
      }
      i = endX;
      j = endY;
    }
    int rest = Integer.compare(x.length() - i, y.length() - j);
    return rest != 0 ? rest : a.compareTo(b);
  }

  /** A run of digits counts as one sign; any other sign stands alone. */
  private static int runEnd(String s, int from) {
    int end = from + 1;
    if (isDigit(s.charAt(from))) {
      while (end < s.length() && isDigit(s.charAt(end))) {
        end++;
      }
    }
    return end;
  }

  private static int compareRuns(String x, String y) {
    if (isDigit(x.charAt(0)) && isDigit(y.charAt(0))) {
      return new BigInteger(x).compareTo(new BigInteger(y));
    }
    return x.compareTo(y);
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }
}
