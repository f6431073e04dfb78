package dev.placket.packs.run;

import dev.placket.layout.density.DensityTargets;
import dev.placket.packs.compose.ComposedPack;
import dev.placket.packs.compose.ComposedSheet;
import dev.placket.packs.compose.Composer;
import dev.placket.packs.compose.PackLimits;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.PaperOption;
import dev.placket.packs.flats.Differences;
import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.flats.Reading;
import dev.placket.packs.page.Inked;
import dev.placket.packs.page.PdfPack;
import dev.placket.packs.placed.KeepWeight;
import dev.placket.packs.placed.PlacedFlat;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.report.Findings;
import dev.placket.packs.report.RunResult;
import dev.placket.packs.report.SheetResult;
import dev.placket.packs.report.Telling;
import dev.placket.packs.text.Lettering;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One run over a description: read, fit, check, draw, write.
 *
 * @param read the description, read
 * @param out the folder that files are written to
 * @param paper the paper instead of the described one; null for that
 * @param blank whether the same sheets are written without flats, too
 * @param replace whether existing files are overwritten
 * @param allowSoft whether pictures may grow until they are soft
 * @param weight the maximum size of the PDF in bytes
 * @param limits the maximum size of the pack
 * @param reading how pictures are read
 * @param telling what is reported, and how
 */
public record PackRun(
    Described read,
    Path out,
    @Nullable PaperOption paper,
    boolean blank,
    boolean replace,
    boolean allowSoft,
    long weight,
    PackLimits limits,
    Reading reading,
    Telling telling) {
  private static final DensityTargets TARGETS = DensityTargets.DEFAULT;

  /**
   * Runs.
   *
   * @throws Refusal if an input is at fault or nothing fits; nothing is written then
   */
  public RunResult run() throws Refusal {
    Described described =
        paper == null
            ? read
            : new Described(
                read.file(),
                read.pack().on(paper.paper(), paper.turned()),
                read.places(),
                read.faults());
    Lettering lettering = Composer.lettering(described);
    Composer composer =
        new Composer(described, TARGETS, allowSoft, lettering, reading, limits.rows());
    limits.check(read.file(), composer.sheets(Map.of()));
    ComposedPack first = composer.pack(Map.of());
    if (telling.strict()) {
      Differences.check(items(first).toList());
    }
    files(first).check(items(first));
    PackFit fitted = PackFit.of(first, telling.units());
    limits.check(read.file(), composer.sheets(fitted.more()));
    ComposedPack pack = fitted.more().isEmpty() ? first : composer.pack(fitted.more());
    limits.checkPixels(
        read.file(),
        pack.sheets().stream()
            .mapToLong(sheet -> PdfPack.previewPixels(sheet.page().sheet().paper()))
            .sum());
    RunFiles files = files(pack);
    files.check(items(pack));
    List<SheetResult> placed = fitted.results();
    KeepWeight.Kept kept = kept(pack, placed, lettering);
    List<SheetResult> results = new ArrayList<>();
    for (int i = 0; i < placed.size(); i++) {
      results.add(placed.get(i).with(kept.sheets().get(i)));
    }
    Findings findings =
        new Findings(
            pack.title(), read.file(), List.of(), List.of(), results, pack.notes(), kept.weight());
    List<PdfPack.Filled> pages = pages(pack, kept.sheets(), lettering);
    return files.write(kept.file(), pages, findings, pack.fields(), telling);
  }

  private static Stream<FlatSet.Item> items(ComposedPack pack) {
    return pack.sheets().stream().flatMap(sheet -> sheet.items().stream());
  }

  private RunFiles files(ComposedPack pack) {
    return new RunFiles(out, pack.fileName(), previews(pack), blank, replace);
  }

  private static List<String> previews(ComposedPack pack) {
    List<String> names = new ArrayList<>();
    for (int i = 1; i <= pack.sheets().size(); i++) {
      names.add(pack.fileName() + "-" + i + ".png");
    }
    return names;
  }

  private KeepWeight.Kept kept(ComposedPack pack, List<SheetResult> placed, Lettering lettering)
      throws Refusal {
    try {
      return new KeepWeight(
              weight, TARGETS, sheets -> writer(pack).pdf(pages(pack, sheets, lettering)))
          .write(placed.stream().map(SheetResult::flats).toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static PdfPack writer(ComposedPack pack) {
    return new PdfPack(pack.title());
  }

  private static List<PdfPack.Filled> pages(
      ComposedPack pack, List<List<PlacedFlat>> sheets, Lettering lettering) {
    List<PdfPack.Filled> pages = new ArrayList<>();
    for (int i = 0; i < sheets.size(); i++) {
      ComposedSheet sheet = pack.sheets().get(i);
      List<Inked> inked = new ArrayList<>();
      for (PlacedFlat flat : sheets.get(i)) {
        boolean bar = sheet.trueSize().contains(flat.flat().id());
        inked.add(bar ? Drawn.checked(flat, lettering) : Drawn.inked(flat, lettering));
      }
      pages.add(new PdfPack.Filled(sheet.page(), inked));
    }
    return pages;
  }
}
