package dev.placket.demo;

import dev.placket.demo.result.FitJson;
import dev.placket.demo.result.SheetResult;
import dev.placket.layout.density.DensityTargets;
import dev.placket.pictures.PrintLimits;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/** Why a run ends without a sheet: messages for the reader and the code it exits with. */
public final class Refusal extends Exception {
  private static final long serialVersionUID = 1;

  /** Exit code for wrong usage or input. */
  public static final int INPUT = 2;

  /** Exit code for flats that find no room. */
  public static final int NO_ROOM = 4;

  private final int exitCode;
  private final transient List<String> messages;
  private final transient List<SheetResult> sheets;
  private final transient byte[] json;

  /**
   * A refusal with its messages, each of which names what was found and what to do.
   *
   * @param exitCode {@link #INPUT} or {@link #NO_ROOM}
   * @param messages one or more
   */
  public Refusal(int exitCode, List<String> messages) {
    this(exitCode, messages, List.of(), new byte[0]);
  }

  private Refusal(int exitCode, List<String> messages, List<SheetResult> sheets, byte[] json) {
    super(String.join(System.lineSeparator(), messages));
    this.exitCode = exitCode;
    this.messages = List.copyOf(messages);
    this.sheets = List.copyOf(sheets);
    this.json = json;
  }

  /**
   * Flats that have no room, with the values behind the words.
   *
   * @param sheets what came of each sheet
   */
  public static Refusal noRoom(List<String> messages, List<SheetResult> sheets) {
    return new Refusal(NO_ROOM, messages, sheets, new byte[0]);
  }

  /** A refusal of input with one message. */
  public static Refusal input(String message) {
    return new Refusal(INPUT, List.of(message));
  }

  /** The code the run exits with. */
  public int exitCode() {
    return exitCode;
  }

  /** The same with {@code fit.json} as it would be for the pack, where flats have no room. */
  Refusal of(String title, Map<String, String> fields) {
    if (sheets.isEmpty()) {
      return this;
    }
    try {
      byte[] told =
          FitJson.bytes(title, fields, DensityTargets.DEFAULT, PrintLimits.DEFAULT, null, sheets);
      return new Refusal(exitCode, messages, sheets, told);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** {@code fit.json} with the conflicts; empty where there are none. Not to be changed. */
  byte[] json() {
    return json;
  }

  /** The messages, in the order in which they are read. */
  public List<String> messages() {
    return messages;
  }
}
