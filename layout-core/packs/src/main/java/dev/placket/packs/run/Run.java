package dev.placket.packs.run;

import dev.placket.layout.density.DensityTargets;
import dev.placket.packs.flats.Differences;
import dev.placket.packs.json.NoRoomRefusal;
import dev.placket.packs.page.PdfPack;
import dev.placket.packs.placed.KeepWeight;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.report.Findings;
import dev.placket.packs.report.RunResult;
import dev.placket.packs.report.SheetResult;
import dev.placket.packs.run.Composition.FittedPack;
import dev.placket.packs.run.Composition.Placed;
import dev.placket.packs.text.Lettering;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The one way from a composition to the files of a pack: place, prepare, draw, report, write. */
record Run(Composition composition, RunOptions how, Lettering lettering) {
  RunResult run() throws Refusal {
    if (how.reporting().strict()) {
      Differences.check(composition.items());
    }
    files(composition.sheets()).check(composition.items());
    Placed placed = place();
    how.limits().check(composition.source(), placed.sheets());
    RunFiles files = files(placed.sheets());
    files.check(composition.items());
    FittedPack pack = placed.pack();
    how.limits().checkPixels(composition.source(), previewPixels(pack));
    PackPages drawn =
        new PackPages(pack, new Drawn(lettering, composition.phrases()), lettering, how.revised());
    KeepWeight.Kept kept = kept(pack, drawn);
    List<PdfPack.Filled> pages = drawn.of(kept.sheets());
    PackParts.Split split = split(kept, pages, files);
    if (!split.parts().isEmpty()) {
      kept = new KeepWeight.Kept(kept.file(), kept.sheets(), kept.weight().with(split.parts()));
      files = files.in(split.files().keySet());
      files.check(composition.items());
    }
    return files.write(
        kept.file(),
        split.files(),
        pages.stream().map(p -> PdfPack.preview(p, how.limits().preview())).toList(),
        how.blank() ? withoutFlats(pages) : null,
        findings(pack, kept, drawn.notes()),
        composition.facts(),
        how);
  }

  private Placed place() throws Refusal {
    try {
      return composition.place();
    } catch (NoRoomRefusal e) {
      throw e.of(composition.title(), composition.facts());
    }
  }

  private RunFiles files(int sheets) {
    IssueFiles issue = how.issue();
    return issue == null
        ? RunFiles.ofPdf(how.out(), how.overwrite(), composition.fileName(), sheets, how.blank())
        : RunFiles.ofPdf(how.out(), false, issue.stem(), sheets, how.blank()).of(issue);
  }

  private long previewPixels(FittedPack pack) {
    long most = how.limits().preview();
    return pack.sheets().stream()
        .mapToLong(sheet -> PdfPack.previewPixels(sheet.page().sheet().paper(), most))
        .sum();
  }

  private KeepWeight.Kept kept(FittedPack pack, PackPages drawn) throws Refusal {
    PdfPack pdf = new PdfPack(composition.title(), composition.phrases().tags());
    KeepWeight.Writer writer = sheets -> pdf.pdf(drawn.of(sheets));
    try {
      return new KeepWeight(how.maxBytes(), DensityTargets.DEFAULT, writer)
          .write(pack.sheets().stream().map(sheet -> sheet.result().flats()).toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The parts of a file that is over the size limit; none of another. */
  private PackParts.Split split(KeepWeight.Kept kept, List<PdfPack.Filled> pages, RunFiles files) {
    if (kept.weight().over() == 0) {
      return PackParts.Split.NONE;
    }
    String stem = files.main().replaceFirst("\\.pdf$", "");
    try {
      return new PackParts(
              composition.title(), composition.phrases().tags(), lettering, how.maxBytes())
          .of(pages, stem);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Findings findings(FittedPack pack, KeepWeight.Kept kept, List<String> unmarked) {
    List<SheetResult> results = new ArrayList<>();
    for (int i = 0; i < pack.sheets().size(); i++) {
      results.add(pack.sheets().get(i).result().with(kept.sheets().get(i)));
    }
    return new Findings(
        composition.title(),
        composition.source(),
        pack.read(),
        pack.unnamed(),
        results,
        Stream.of(pack.notes(), claim(results), unmarked).flatMap(List::stream).toList(),
        kept.weight());
  }

  /** Why the PDF does not claim to conform to the standards for archives; none if it does. */
  private static List<String> claim(List<SheetResult> results) {
    return results.stream()
        .flatMap(r -> r.flats().stream())
        .filter(f -> f.archiveFault() != null)
        .map(f -> f.item().file().name() + " (" + f.archiveFault() + ")")
        .distinct()
        .map(f -> "PDF/A-2a and PDF/UA-1: not claimed, because of " + f + ".")
        .limit(1)
        .toList();
  }

  private byte[] withoutFlats(List<PdfPack.Filled> pages) {
    try {
      return new PdfPack(composition.title(), composition.phrases().tags())
          .pdf(pages.stream().map(p -> new PdfPack.Filled(p.page(), List.of())).toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
