package dev.placket.packs.refusal;

import dev.placket.pictures.fault.Visible;
import java.util.List;

/** Why a run ends without a sheet: its kind and messages for the reader. */
public class Refusal extends Exception {
  private static final long serialVersionUID = 1;

  /** What is at fault. */
  public enum Kind {
    /** The call or its input. */
    INPUT,
    /** The flats have no room. */
    NO_ROOM
  }

  private final Kind kind;
  private final transient List<String> messages;

  /**
   * A refusal with its messages, each of which names what was found and what to do. Signs of the
   * names in them that would break a line or steer a terminal are spelled out, see {@link Visible}.
   *
   * @param kind what is at fault
   * @param messages one or more
   */
  public Refusal(Kind kind, List<String> messages) {
    super(String.join(System.lineSeparator(), lines(messages)));
    this.kind = kind;
    this.messages = lines(messages);
  }

  /** A refusal of input with one message. */
  public static Refusal input(String message) {
    return input(List.of(message));
  }

  /** A refusal of input with messages, one or more. */
  public static Refusal input(List<String> messages) {
    return new Refusal(Kind.INPUT, messages);
  }

  private static List<String> lines(List<String> messages) {
    return messages.stream().map(Visible::words).toList();
  }

  /** What is at fault. */
  public Kind kind() {
    return kind;
  }

  /** The messages in the order in which they are read, each on one line. */
  public List<String> messages() {
    return messages;
  }
}
