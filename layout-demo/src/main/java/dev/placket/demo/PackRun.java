package dev.placket.demo;

import dev.placket.demo.description.Described;
import dev.placket.demo.description.PackReader;
import dev.placket.demo.folder.FlatSet;
import dev.placket.demo.pack.ComposedPack;
import dev.placket.demo.pack.ComposedSheet;
import dev.placket.demo.pack.Composer;
import dev.placket.demo.pdf.Inked;
import dev.placket.demo.pdf.PdfPack;
import dev.placket.demo.result.FitJson;
import dev.placket.demo.result.Outputs;
import dev.placket.demo.result.Report;
import dev.placket.demo.result.SheetResult;
import dev.placket.demo.sheet.Lettering;
import dev.placket.layout.check.Breach;
import dev.placket.layout.check.Referee;
import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.fit.Conflict;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Fitter;
import dev.placket.layout.sheet.Paper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One run over a description: read, rule, fit, check, draw, write. */
record PackRun(
    Path file,
    Path out,
    @Nullable Paper paper,
    boolean blank,
    boolean replace,
    boolean allowSoft,
    long weight) {
  private static final DensityTargets TARGETS = DensityTargets.DEFAULT;

  FitRun.Result run() throws Refusal {
    Described read = PackReader.read(file);
    Described described =
        paper == null
            ? read
            : new Described(file, read.pack().on(paper), read.places(), read.faults());
    Lettering lettering = Composer.lettering(described);
    ComposedPack pack = Composer.compose(described, TARGETS, allowSoft, lettering);
    List<String> names = names(pack);
    Outputs outputs = new Outputs(out, replace);
    List<String> obstacles = outputs.obstacles(names);
    if (!obstacles.isEmpty()) {
      throw new Refusal(Refusal.INPUT, obstacles);
    }
    List<SheetResult> placed = fit(pack);
    KeepWeight.Kept kept = kept(pack, placed, lettering);
    List<SheetResult> results = new ArrayList<>();
    for (int i = 0; i < placed.size(); i++) {
      results.add(placed.get(i).with(kept.sheets().get(i)));
    }
    outputs.write(files(pack, results, lettering, kept));
    List<Path> written = names.stream().map(out::resolve).toList();
    String report = Report.ofPack(pack.title(), results, pack.notes(), kept.weight(), written);
    boolean soft =
        kept.weight().over() > 0
            || results.stream().flatMap(r -> r.flats().stream()).anyMatch(Drawn::soft);
    return new FitRun.Result(report, soft);
  }

  private List<String> names(ComposedPack pack) {
    List<String> names = new ArrayList<>();
    names.add(pack.fileName() + ".pdf");
    for (int i = 1; i <= pack.sheets().size(); i++) {
      names.add(preview(pack, i));
    }
    if (blank) {
      names.add(pack.fileName() + "-blank.pdf");
    }
    names.add("fit.json");
    return names;
  }

  private static String preview(ComposedPack pack, int number) {
    return pack.fileName() + "-" + number + ".png";
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
      if (!(Fitter.fit(request) instanceof Fit fit)) {
        noRoom.add("sheet " + sheet.id() + " (" + sheet.name() + "):");
        noRoom.addAll(ConflictText.lines(request, (Conflict) Fitter.fit(request)));
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
      throw new Refusal(Refusal.NO_ROOM, noRoom);
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

  private Map<String, byte[]> files(
      ComposedPack pack, List<SheetResult> results, Lettering lettering, KeepWeight.Kept kept) {
    List<PdfPack.Filled> blanks =
        pack.sheets().stream().map(s -> new PdfPack.Filled(s.page(), List.of())).toList();
    try {
      Map<String, byte[]> files = new LinkedHashMap<>();
      files.put(pack.fileName() + ".pdf", kept.file());
      List<PdfPack.Filled> pages = pages(pack, kept.sheets(), lettering);
      for (int i = 0; i < pages.size(); i++) {
        files.put(preview(pack, i + 1), PdfPack.preview(pages.get(i)));
      }
      if (blank) {
        files.put(pack.fileName() + "-blank.pdf", writer(pack).pdf(blanks));
      }
      files.put(
          "fit.json", FitJson.bytes(pack.title(), pack.fields(), TARGETS, kept.weight(), results));
      return files;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
