package consumer;

import dev.placket.layout.sheet.PaperSize;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.run.Packs;
import dev.placket.packs.run.RunOptions;
import java.nio.file.Path;

/** Places the flats of a folder on A4 and writes the pack beside them. */
public final class Program {
  private Program() {}

  /** {@code fit.json} of the pack. */
  public static byte[] make(Path flats, Path out) throws Refusal {
    return Packs.ofFolder(flats, PaperSize.A4.landscape(), RunOptions.into(out)).json();
  }
}
