package dev.placket.demo;

import dev.placket.demo.description.Described;
import dev.placket.demo.folder.FlatSet;
import dev.placket.demo.pack.ComposedPack;
import dev.placket.demo.pack.ComposedSheet;
import dev.placket.demo.pack.Composer;
import dev.placket.demo.pdf.Inked;
import dev.placket.demo.pdf.PdfPack;
import dev.placket.demo.result.Findings;
import dev.placket.demo.result.NoRoom;
import dev.placket.demo.result.RunResult;
import dev.placket.demo.result.SheetResult;
import dev.placket.demo.result.Telling;
import dev.placket.demo.sheet.Lettering;
import dev.placket.layout.check.Breach;
import dev.placket.layout.check.Referee;
import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.fit.Conflict;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Fitter;
import dev.placket.layout.fit.Outcome;
import dev.placket.layout.image.Typefaces;
import dev.placket.layout.sheet.Paper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One run over a description: read, rule, fit, check, draw, write. */
record PackRun(
    Described read,
    Path out,
    @Nullable Paper paper,
    boolean blank,
    boolean replace,
    boolean allowSoft,
    long weight,
    Typefaces typefaces,
    Telling telling) {
  private static final DensityTargets TARGETS = DensityTargets.DEFAULT;

  RunResult run() throws Refusal {
    Described described =
        paper == null
            ? read
            : new Described(read.file(), read.pack().on(paper), read.places(), read.faults());
    Lettering lettering = Composer.lettering(described);
    ComposedPack pack = Composer.compose(described, TARGETS, allowSoft, lettering, typefaces);
    RunFiles files = new RunFiles(out, pack.fileName(), previews(pack), blank, replace);
    files.check();
    List<SheetResult> placed = fit(pack);
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

  private static List<String> previews(ComposedPack pack) {
    List<String> names = new ArrayList<>();
    for (int i = 1; i <= pack.sheets().size(); i++) {
      names.add(pack.fileName() + "-" + i + ".png");
    }
    return names;
  }

  private static List<SheetResult> fit(ComposedPack pack) throws Refusal {
    List<SheetResult> results = new ArrayList<>();
    List<String> noRoom = new ArrayList<>();
    for (ComposedSheet sheet : pack.sheets()) {
      if (sheet.items().isEmpty()) {
        results.add(SheetResult.bare(sheet.id(), sheet.page().sheet(), sheet.spacing()));
        continue;
      }
      FlatSet set = new FlatSet(sheet.items(), sheet.ratios());
      FitRequest request =
          FitRequest.of(sheet.page().sheet(), set.flats(), sheet.spacing())
              .withRules(sheet.rules());
      Outcome outcome = Fitter.fit(request);
      if (!(outcome instanceof Fit fit)) {
        noRoom.add("sheet " + sheet.id() + " (" + sheet.name() + "):");
        Conflict conflict = (Conflict) outcome;
        noRoom.addAll(ConflictText.lines(request, conflict));
        results.add(SheetResult.noRoom(sheet.id(), request, new NoRoom(conflict, Map.of())));
        continue;
      }
      List<Breach> breaches = Referee.check(request, fit);
      if (!breaches.isEmpty()) {
        throw new IllegalStateException("the referee refuses the fit: " + breaches);
      }
      List<PlacedFlat> placed = Placing.of(set, fit, TARGETS);
      results.add(SheetResult.of(sheet.id(), request, fit, placed, json -> {}));
    }
    if (!noRoom.isEmpty()) {
      throw Refusal.noRoom(noRoom, results).of(pack.title(), pack.fields());
    }
    return results;
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
