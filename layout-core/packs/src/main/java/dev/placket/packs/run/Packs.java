package dev.placket.packs.run;

import dev.placket.layout.sheet.PaperSize;
import dev.placket.packs.compose.Composer;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.PaperChoice;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.report.RunResult;
import dev.placket.packs.text.Lettering;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * Makes packs: PDF, previews, report and {@code fit.json}. The files are written when all of them
 * are made; a refusal leaves none.
 */
public final class Packs {
  private Packs() {}

  /**
   * Places the flats of a folder on the built-in sheet.
   *
   * @param folder drawings and pictures, their roles in their names
   * @param paper the paper of the sheet
   * @param how what is written where
   * @throws Refusal if an input is at fault or the flats have no room
   */
  public static RunResult ofFolder(Path folder, PaperSize paper, RunOptions how) throws Refusal {
    FolderComposition composition = FolderComposition.of(folder, paper, how);
    return new Run(composition, how, composition.lettering()).run();
  }

  /**
   * Makes the sheets of a description.
   *
   * @param read the description
   * @param paper the paper instead of the described one; null for that
   * @param how what is written where
   * @throws Refusal if an input is at fault or the flats have no room
   */
  public static RunResult ofDescription(Described read, @Nullable PaperChoice paper, RunOptions how)
      throws Refusal {
    Described described =
        paper == null
            ? read
            : new Described(
                read.file(),
                read.pack().on(paper.paper(), paper.turned()),
                read.places(),
                read.faults());
    Lettering lettering = Composer.lettering(described);
    return new Run(DescribedComposition.of(described, lettering, how), how, lettering).run();
  }
}
