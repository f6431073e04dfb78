package dev.placket.pictures.fault;

/**
 * What a library says of a fault, fit to stand in a message: it may quote the file at any length.
 */
public final class ErrorText {
  private static final int LONGEST = 160;

  private ErrorText() {}

  /** Its words on one line, cut where they are many; the kind of fault where it says nothing. */
  public static String by(Throwable fault) {
    String message = fault.getMessage();
    String words =
        message == null || message.isBlank() ? fault.getClass().getSimpleName() : message;
    return line(words);
  }

  /** Words on one line, cut where they are many. */
  public static String line(String words) {
    String line = words.strip().replaceAll("[\\s\\p{Cntrl}]+", " ");
    return line.length() <= LONGEST ? line : line.substring(0, LONGEST).strip() + "…";
  }
}
