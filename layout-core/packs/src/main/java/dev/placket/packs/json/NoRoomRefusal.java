package dev.placket.packs.json;

import dev.placket.layout.density.DensityTargets;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.report.PackFacts;
import dev.placket.packs.report.SheetResult;
import dev.placket.pictures.base.PrintLimits;
import dev.placket.pictures.fault.Fault;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;

/** Flats that have no room, with the values behind the words. */
public final class NoRoomRefusal extends Refusal {
  private static final long serialVersionUID = 1;

  private final transient List<SheetResult> sheets;
  private final transient byte[] json;

  /**
   * The refusal of a pack that is not titled yet.
   *
   * @param faults one or more
   * @param sheets the result of each sheet
   */
  public NoRoomRefusal(List<Fault> faults, List<SheetResult> sheets) {
    this(faults, sheets, new byte[0]);
  }

  private NoRoomRefusal(List<Fault> faults, List<SheetResult> sheets, byte[] json) {
    super(Kind.NO_ROOM, faults);
    this.sheets = List.copyOf(sheets);
    this.json = json;
  }

  /** The same with {@code fit.json} as it would be for the pack. */
  public NoRoomRefusal of(String title, PackFacts facts) {
    try {
      return new NoRoomRefusal(
          faults(),
          sheets,
          FitJson.bytes(
              title, facts, DensityTargets.DEFAULT, PrintLimits.DEFAULT, null, sheets, List.of()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** {@code fit.json} with the conflicts; empty without a title. Not to be changed. */
  public byte[] json() {
    return json;
  }
}
