package dev.placket.workbooks.run;

import dev.placket.layout.density.DensityTargets;
import dev.placket.packs.flats.Differences;
import dev.placket.packs.json.FitJson;
import dev.placket.packs.output.OutputName;
import dev.placket.packs.output.Outputs;
import dev.placket.packs.placed.PlacedFlat;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.report.Account;
import dev.placket.packs.report.Findings;
import dev.placket.packs.report.Made;
import dev.placket.packs.report.ReportPage;
import dev.placket.packs.report.RunResult;
import dev.placket.packs.report.SheetResult;
import dev.placket.packs.report.Telling;
import dev.placket.packs.text.Lettering;
import dev.placket.pictures.PictureException;
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
import dev.placket.workbooks.show.OntoWords;
import dev.placket.workbooks.show.Preview;
import dev.placket.workbooks.show.WorksheetJson;
import dev.placket.workbooks.write.WorkbookCopy;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * One run: read the workbook and the flats, fit, check, write a copy.
 *
 * @param flats where they come from
 * @param onto the workbook
 * @param out the folder for the copy
 * @param replace whether files that are there may be written anew
 * @param leeway how many pixels readers may take a column or row for smaller or larger; 0 or more
 * @param limits how much the workbook may ask for
 * @param telling how it is told
 */
public record OntoRun(
    Given.Source flats,
    Path onto,
    Path out,
    boolean replace,
    int leeway,
    WorkbookLimits limits,
    Telling telling) {
  private static final DensityTargets TARGETS = DensityTargets.DEFAULT;

  /**
   * Runs.
   *
   * @throws Refusal if an input is at fault or nothing fits; nothing is written then
   */
  public RunResult run() throws Refusal {
    if (leeway < 0) {
      throw Refusal.input("--leeway " + leeway + ": is a number of pixels, 0 or more.");
    }
    try (Parts parts = Parts.open(onto, limits)) {
      return run(parts);
    }
  }

  private RunResult run(Parts parts) throws Refusal {
    Workbook workbook = WorkbookReader.read(parts);
    Sheets sheets = new Sheets(new WorksheetReader(parts, workbook));
    Lettering lettering = Lettering.load();
    Given given = flats.of(workbook, lettering);
    if (telling.strict()) {
      Differences.check(given.tasks().stream().flatMap(t -> t.set().items().stream()).toList());
    }
    List<Fitted> fitted = Together.map(given.tasks(), t -> firstWithRoom(t, workbook, sheets));
    Outputs outputs = new Outputs(out, replace);
    List<String> names = names(fitted);
    Stream<Path> read =
        given.tasks().stream().flatMap(t -> t.set().items().stream()).map(i -> i.file().path());
    List<String> obstacles = outputs.obstacles(names, read);
    if (!obstacles.isEmpty()) {
      throw Refusal.input(obstacles);
    }
    return write(parts, workbook, given, fitted, outputs, lettering);
  }

  /** Worksheets as they are asked for: the package is read by one at a time. */
  private record Sheets(WorksheetReader reader) {
    synchronized Worksheet read(Workbook.Entry entry) throws Refusal {
      return reader.read(entry);
    }
  }

  private Fitted firstWithRoom(Given.Task task, Workbook workbook, Sheets sheets) throws Refusal {
    List<String> why = new ArrayList<>();
    List<Workbook.Entry> worksheets = task.ranges().on(workbook, task.worksheets());
    Worksheet bare = null;
    boolean allBare = true;
    for (Workbook.Entry entry : worksheets) {
      Worksheet read = sheets.read(entry);
      if (read.bare(Anchored.OWN) && worksheets.size() > 1) {
        why.add("worksheet '" + entry.name() + "' is bare and passed over; name it to use it.");
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
        why.addAll(e.messages());
      }
    }
    // Where all are bare, nobody meant another one.
    if (bare != null && allBare) {
      return fit(bare, task, workbook);
    }
    throw new Refusal(Refusal.Kind.NO_ROOM, why);
  }

  private Fitted fit(Worksheet worksheet, Given.Task task, Workbook workbook) throws Refusal {
    return new WorksheetFit(worksheet, leeway, TARGETS).fit(task.set(), workbook, task.ranges());
  }

  /** The copy, a preview of each worksheet in play, and the numbers. */
  private List<String> names(List<Fitted> fitted) {
    String workbook = onto.getFileName().toString();
    int dot = workbook.lastIndexOf('.');
    String own = dot > 0 ? workbook.substring(0, dot) : workbook;
    String ending = dot > 0 ? "." + OutputName.stem(workbook.substring(dot + 1), "xlsx") : "";
    List<String> names = new ArrayList<>(List.of(OutputName.kept(own, "workbook") + ending));
    String stem = OutputName.stem(own, "workbook");
    for (Fitted f : fitted) {
      String sheet = OutputName.stem(f.worksheet().name(), "worksheet");
      names.add(stem + "-" + f.worksheet().entry().index() + "-" + sheet + ".png");
    }
    names.add(stem + "-report.html");
    names.add("fit.json");
    return names;
  }

  private RunResult write(
      Parts parts,
      Workbook workbook,
      Given given,
      List<Fitted> fitted,
      Outputs outputs,
      Lettering lettering)
      throws Refusal {
    Set<String> read = new LinkedHashSet<>();
    Set<String> unnamed = new LinkedHashSet<>();
    for (Given.Task task : given.tasks()) {
      read.addAll(task.read());
      unnamed.addAll(task.unnamed());
    }
    List<SheetResult> results = new ArrayList<>();
    for (Fitted f : fitted) {
      List<PlacedFlat> flats = f.pictures().stream().map(Anchored::flat).toList();
      results.add(SheetResult.of(null, f.request(), f.fit(), flats, new WorksheetJson(f, leeway)));
    }
    Findings findings =
        OntoWords.findings(title(given), given.source(), read, unnamed, fitted, results, leeway);
    List<String> names = names(fitted);
    byte[] copy = WorkbookCopy.bytes(parts, workbook, fitted, OntoRun::alternative);
    List<byte[]> previews =
        fitted.parallelStream().map(f -> png(Preview.of(f, lettering))).toList();
    String page = names.get(previews.size() + 1);
    Made made = new Made(out, names, names.get(0), copy.length, page);
    Account account = Account.of(findings, telling, made);
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put(names.get(0), copy);
    for (int i = 0; i < previews.size(); i++) {
      files.put(names.get(i + 1), previews.get(i));
    }
    files.put(page, ReportPage.of(account, previews));
    try {
      byte[] json =
          FitJson.bytes(findings.title(), given.fields(), TARGETS, telling.limits(), null, results);
      files.put("fit.json", json);
      outputs.write(files);
      return new RunResult(account, json);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
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

  private String title(Given given) {
    String named = given.title().isEmpty() ? onto.getFileName().toString() : given.title();
    return named + ": workbook";
  }
}
