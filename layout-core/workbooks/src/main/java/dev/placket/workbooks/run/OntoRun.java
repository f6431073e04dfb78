package dev.placket.workbooks.run;

import dev.placket.layout.density.DensityTargets;
import dev.placket.packs.flats.Differences;
import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.output.OutputName;
import dev.placket.packs.placed.PlacedFlat;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.report.Findings;
import dev.placket.packs.report.PackFacts;
import dev.placket.packs.report.RunResult;
import dev.placket.packs.report.SheetResult;
import dev.placket.packs.run.RunFiles;
import dev.placket.packs.run.RunOptions;
import dev.placket.packs.text.Lettering;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.Place;
import dev.placket.pictures.prepare.ImageRows;
import dev.placket.pictures.prepare.PngWriter;
import dev.placket.workbooks.parts.Parts;
import dev.placket.workbooks.parts.WorkbookLimits;
import dev.placket.workbooks.place.Anchored;
import dev.placket.workbooks.place.Fitted;
import dev.placket.workbooks.place.WorksheetFit;
import dev.placket.workbooks.read.Workbook;
import dev.placket.workbooks.read.WorkbookReader;
import dev.placket.workbooks.read.Worksheet;
import dev.placket.workbooks.read.WorksheetReader;
import dev.placket.workbooks.refusal.WorkbookSetting;
import dev.placket.workbooks.show.OntoWords;
import dev.placket.workbooks.show.Preview;
import dev.placket.workbooks.show.WorksheetJson;
import dev.placket.workbooks.write.WorkbookCopy;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * One run: read the workbook and the flats, fit, check, write a copy.
 *
 * @param flats where they come from
 * @param onto the workbook
 * @param tolerance the tolerance for column and row sizes in pixels; 0 or more
 * @param limits the limits for reading the workbook
 * @param how what is written where
 */
public record OntoRun(
    WorkbookFlats.Source flats, Path onto, int tolerance, WorkbookLimits limits, RunOptions how) {
  private static final DensityTargets TARGETS = DensityTargets.DEFAULT;

  /** Pixels of a preview of paper larger than A1, at one to the point. */
  private static final long LARGE_PREVIEW = 5_000_000;

  /**
   * Runs.
   *
   * @throws Refusal if an input is at fault or nothing fits; nothing is written then
   */
  public RunResult run() throws Refusal {
    if (tolerance < 0) {
      throw Refusal.input(
          Fault.setting(WorkbookSetting.TOLERANCE, tolerance, "is not a tolerance")
              .remedy("give a number of pixels, 0 or more"));
    }
    try (Parts parts = Parts.open(onto, limits)) {
      return run(parts);
    }
  }

  private RunResult run(Parts parts) throws Refusal {
    Workbook workbook = WorkbookReader.read(parts);
    Sheets sheets = new Sheets(new WorksheetReader(parts, workbook));
    Lettering lettering = Lettering.load();
    WorkbookFlats given = flats.of(workbook, lettering);
    List<FlatSet.Item> items =
        given.tasks().stream().flatMap(t -> t.set().items().stream()).toList();
    if (how.reporting().strict()) {
      Differences.check(items);
    }
    List<Fitted> fitted = Together.map(given.tasks(), t -> firstWithRoom(t, workbook, sheets));
    RunFiles files = files(fitted);
    files.check(items);
    long most = how.limits().preview();
    how.limits().checkPixels(onto, fitted.stream().mapToLong(f -> Preview.pixels(f, most)).sum());
    return write(parts, workbook, given, fitted, files, lettering);
  }

  /** Worksheets as they are asked for: the package is read by one at a time. */
  private record Sheets(WorksheetReader reader) {
    synchronized Worksheet read(Workbook.Entry entry) throws Refusal {
      return reader.read(entry);
    }
  }

  private Fitted firstWithRoom(WorkbookFlats.Task task, Workbook workbook, Sheets sheets)
      throws Refusal {
    List<Fault> why = new ArrayList<>();
    List<Workbook.Entry> worksheets = task.ranges().on(workbook, task.worksheets());
    Worksheet bare = null;
    boolean allBare = true;
    for (Workbook.Entry entry : worksheets) {
      Worksheet read = sheets.read(entry);
      if (read.bare(Anchored.OWN) && worksheets.size() > 1) {
        why.add(
            Fault.noRoom("is empty and skipped")
                .at(Place.worksheet(entry.name()))
                .remedy("name it to use it", WorkbookSetting.WORKSHEET));
        bare = bare == null ? read : bare;
        continue;
      }
      allBare = false;
      try {
        return fit(read, task, workbook);
      } catch (Refusal e) {
        if (e.kind() != Refusal.Kind.NO_ROOM) {
          throw e;
        }
        why.addAll(e.faults());
      }
    }
    // Where all are bare, nobody meant another one.
    if (bare != null && allBare) {
      return fit(bare, task, workbook);
    }
    throw new Refusal(Refusal.Kind.NO_ROOM, why);
  }

  private Fitted fit(Worksheet worksheet, WorkbookFlats.Task task, Workbook workbook)
      throws Refusal {
    return new WorksheetFit(worksheet, tolerance, TARGETS, how.reporting().units())
        .fit(task.set(), workbook, task.ranges());
  }

  /** The copy, a preview of each worksheet in play, and the numbers. */
  private RunFiles files(List<Fitted> fitted) {
    String workbook = onto.getFileName().toString();
    int dot = workbook.lastIndexOf('.');
    String own = dot > 0 ? workbook.substring(0, dot) : workbook;
    String ending = dot > 0 ? "." + OutputName.stem(workbook.substring(dot + 1), "xlsx") : "";
    String stem = OutputName.stem(own, "workbook");
    List<String> previews = new ArrayList<>();
    for (Fitted f : fitted) {
      String sheet = OutputName.stem(f.worksheet().name(), "worksheet");
      previews.add(stem + "-" + f.worksheet().entry().index() + "-" + sheet + ".png");
    }
    return new RunFiles(
        how.out(),
        how.overwrite(),
        OutputName.kept(own, "workbook") + ending,
        previews,
        null,
        RunFiles.report(stem));
  }

  private RunResult write(
      Parts parts,
      Workbook workbook,
      WorkbookFlats given,
      List<Fitted> fitted,
      RunFiles files,
      Lettering lettering)
      throws Refusal {
    Set<String> read = new LinkedHashSet<>();
    Set<String> unnamed = new LinkedHashSet<>();
    for (WorkbookFlats.Task task : given.tasks()) {
      read.addAll(task.read());
      unnamed.addAll(task.unnamed());
    }
    List<SheetResult> results = new ArrayList<>();
    for (Fitted f : fitted) {
      List<PlacedFlat> flats = f.pictures().stream().map(Anchored::flat).toList();
      results.add(
          SheetResult.of(null, f.request(), f.fit(), flats, new WorksheetJson(f, tolerance)));
    }
    Findings findings =
        OntoWords.findings(title(given), given.source(), read, unnamed, fitted, results, tolerance);
    byte[] copy = WorkbookCopy.bytes(parts, workbook, fitted, OntoRun::alternative);
    return files.write(
        copy,
        Map.of(),
        previews(fitted, lettering),
        null,
        findings,
        PackFacts.of(given.fields()),
        how);
  }

  /** Previews of usual paper are drawn together, large ones one by one: each takes its memory. */
  private List<byte[]> previews(List<Fitted> fitted, Lettering lettering) {
    long most = how.limits().preview();
    boolean large = fitted.stream().anyMatch(f -> Preview.pixels(f, most) > LARGE_PREVIEW);
    return (large ? fitted.stream() : fitted.parallelStream())
        .map(f -> png(Preview.of(f, lettering, most)))
        .toList();
  }

  private static byte[] png(BufferedImage image) {
    try {
      return PngWriter.encodeLineArt(new ImageRows(image));
    } catch (PictureException e) {
      throw new IllegalStateException("pixels in memory can be read", e);
    }
  }

  private static String alternative(Anchored picture) {
    var flat = picture.flat();
    boolean drawing = flat.item().file().picture() instanceof dev.placket.pictures.Drawing;
    return flat.called(drawing ? "line drawing" : "picture");
  }

  private String title(WorkbookFlats given) {
    String named = given.title().isEmpty() ? onto.getFileName().toString() : given.title();
    return named + ": workbook";
  }
}
