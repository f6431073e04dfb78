package dev.placket.packs.sample;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/**
 * What a row of a form says when it is sent, so that a change to it is noticed when it comes back.
 *
 * @param sample what the sample is called
 * @param size its size
 * @param point the code of the point of measure
 * @param asked the asked value, as written
 * @param tolerance the tolerance, as written
 * @param unit of both
 */
public record SentRow(
    String sample, String size, String point, String asked, String tolerance, String unit) {
  private static final int BYTES = 3;

  /** How a returned row stands against the one that was sent. */
  public enum Returned {
    /** As it was sent. */
    SAME,
    /** The same row, but not in its place. */
    MOVED,
    /** One of its values was changed. */
    CHANGED
  }

  /**
   * What the row carries: its number and a digest of its values.
   *
   * @param number of the row under its headings, from 1
   */
  public String mark(int number) {
    return number + "-" + digest();
  }

  /**
   * Compares this row, as it came back, with what was sent.
   *
   * @param mark that it carries
   * @param number where it stands now
   */
  public Returned against(String mark, int number) {
    if (mark.equals(mark(number))) {
      return Returned.SAME;
    }
    return mark.matches("[0-9]{1,6}-" + digest()) ? Returned.MOVED : Returned.CHANGED;
  }

  private String digest() {
    String all = String.join("\n", List.of(sample, size, point, asked, tolerance, unit));
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(all.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest, 0, BYTES);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
