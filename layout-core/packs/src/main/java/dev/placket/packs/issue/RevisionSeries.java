package dev.placket.packs.issue;

import java.math.BigInteger;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The order of revisions: letters without I and O, which look like digits; numbers; a stage with
 * its round, as in {@code proto 2}.
 */
public final class RevisionSeries {
  private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";
  private static final Pattern LETTER = Pattern.compile("[A-Z]{1,4}");
  private static final Pattern ROUND = Pattern.compile("(.*?)([0-9]{1,9})");

  private RevisionSeries() {}

  /** The revision after one; empty where its series is not known. */
  public static String next(String revision) {
    String plain = revision.strip();
    BigInteger letters = value(plain);
    if (letters != null) {
      return letters(letters.add(BigInteger.ONE));
    }
    Matcher round = ROUND.matcher(plain);
    if (!round.matches()) {
      return "";
    }
    String number = new BigInteger(round.group(2)).add(BigInteger.ONE).toString();
    int zeros = Math.max(0, round.group(2).length() - number.length());
    return round.group(1) + (round.group(2).startsWith("0") ? "0".repeat(zeros) : "") + number;
  }

  /** Which of two comes first, as a comparison; empty where they are of different series. */
  public static OptionalInt compare(String one, String other) {
    BigInteger a = value(one.strip());
    BigInteger b = value(other.strip());
    if (a != null && b != null) {
      return OptionalInt.of(a.compareTo(b));
    }
    Matcher first = ROUND.matcher(one.strip());
    Matcher second = ROUND.matcher(other.strip());
    boolean same = first.matches() && second.matches() && first.group(1).equals(second.group(1));
    return same
        ? OptionalInt.of(new BigInteger(first.group(2)).compareTo(new BigInteger(second.group(2))))
        : OptionalInt.empty();
  }

  /** The place of letters in their series, from 1; null for anything else. */
  private static @Nullable BigInteger value(String revision) {
    if (!LETTER.matcher(revision).matches()) {
      return null;
    }
    BigInteger value = BigInteger.ZERO;
    for (char c : revision.toCharArray()) {
      int digit = LETTERS.indexOf(c);
      if (digit < 0) {
        return null;
      }
      value =
          value.multiply(BigInteger.valueOf(LETTERS.length())).add(BigInteger.valueOf(digit + 1L));
    }
    return value;
  }

  private static String letters(BigInteger value) {
    StringBuilder letters = new StringBuilder();
    BigInteger base = BigInteger.valueOf(LETTERS.length());
    BigInteger left = value;
    while (left.signum() > 0) {
      BigInteger[] parts = left.subtract(BigInteger.ONE).divideAndRemainder(base);
      letters.append(LETTERS.charAt(parts[1].intValue()));
      left = parts[0];
    }
    return letters.reverse().toString();
  }
}
