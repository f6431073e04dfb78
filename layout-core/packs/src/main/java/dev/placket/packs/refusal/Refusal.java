package dev.placket.packs.refusal;

import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.SettingNames;
import java.util.List;

/** Why a run ends without a sheet, as a value: what is at fault, where, and what to do. */
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
  private final transient List<Fault> faults;

  /**
   * A refusal for faults.
   *
   * @param kind what is at fault as a whole
   * @param faults one or more, in the order in which they are read
   */
  public Refusal(Kind kind, List<Fault> faults) {
    super(String.join(System.lineSeparator(), faults.stream().map(Fault::message).toList()));
    this.kind = kind;
    this.faults = List.copyOf(faults);
  }

  /** A refusal of input with one fault. */
  public static Refusal input(Fault fault) {
    return input(List.of(fault));
  }

  /** A refusal of input with faults, one or more. */
  public static Refusal input(List<Fault> faults) {
    return new Refusal(Kind.INPUT, faults);
  }

  /** What is at fault as a whole. */
  public Kind kind() {
    return kind;
  }

  /** The faults, in the order in which they are read. */
  public List<Fault> faults() {
    return faults;
  }

  /** A message for each fault in the words of the API, each on one line. */
  public List<String> messages() {
    return messages(SettingNames.LIBRARY);
  }

  /** A message for each fault, each on one line, settings called as the program calls them. */
  public List<String> messages(SettingNames names) {
    return faults.stream().map(f -> f.message(names)).toList();
  }
}
