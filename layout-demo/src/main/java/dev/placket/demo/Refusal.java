package dev.placket.demo;

import java.util.List;

/** Why a run ends without a sheet: messages for the reader and the code it exits with. */
public final class Refusal extends Exception {
  private static final long serialVersionUID = 1;

  /** Exit code for wrong usage or input. */
  public static final int INPUT = 2;

  /** Exit code for flats that find no room. */
  public static final int NO_ROOM = 4;

  private final int exitCode;
  private final transient List<String> messages;

  /**
   * A refusal with its messages, each of which names what was found and what to do.
   *
   * @param exitCode {@link #INPUT} or {@link #NO_ROOM}
   * @param messages one or more
   */
  public Refusal(int exitCode, List<String> messages) {
    super(String.join(System.lineSeparator(), messages));
    this.exitCode = exitCode;
    this.messages = List.copyOf(messages);
  }

  /** A refusal of input with one message. */
  public static Refusal input(String message) {
    return new Refusal(INPUT, List.of(message));
  }

  /** The code the run exits with. */
  public int exitCode() {
    return exitCode;
  }

  /** The messages, in the order in which they are read. */
  public List<String> messages() {
    return messages;
  }
}
