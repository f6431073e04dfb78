package dev.placket.packs.run;

import dev.placket.layout.density.DensityTargets;
import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.json.EarlierFiles;
import dev.placket.packs.json.FitJson;
import dev.placket.packs.output.Outputs;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.report.Findings;
import dev.placket.packs.report.PackFacts;
import dev.placket.packs.report.ReportContent;
import dev.placket.packs.report.ReportOptions;
import dev.placket.packs.report.ReportPage;
import dev.placket.packs.report.RunResult;
import dev.placket.packs.report.WrittenFiles;
import dev.placket.packs.revision.Revised;
import dev.placket.pictures.fault.Fault;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The files of a run: what is sent out, a preview of each sheet, the report, {@code fit.json}.
 *
 * @param out the folder they go to
 * @param overwrite whether existing files are overwritten
 * @param main the name of the file that is sent out
 * @param previews names of the previews, one for each sheet
 * @param blank the name of the file without flats; null where none is written
 * @param report the name of the report page
 * @param parts names of the files that the first is split into; none where it is one
 * @param issue that they are an issue; null for a folder that may be written again
 */
public record RunFiles(
    Path out,
    boolean overwrite,
    String main,
    List<String> previews,
    @Nullable String blank,
    String report,
    List<String> parts,
    @Nullable IssueFiles issue) {
  private static final String JSON = "fit.json";

  /** The files of a run that is no issue. */
  public RunFiles(
      Path out,
      boolean overwrite,
      String main,
      List<String> previews,
      @Nullable String blank,
      String report) {
    this(out, overwrite, main, previews, blank, report, List.of(), null);
  }

  /** Copies the list. */
  public RunFiles {
    previews = List.copyOf(previews);
    parts = List.copyOf(parts);
  }

  /** The files of a pack in PDF; previews are numbered where there is more than one sheet. */
  static RunFiles ofPdf(Path out, boolean overwrite, String stem, int sheets, boolean blank) {
    List<String> previews =
        sheets == 1
            ? List.of(stem + ".png")
            : IntStream.rangeClosed(1, sheets).mapToObj(i -> stem + "-" + i + ".png").toList();
    return new RunFiles(
        out, overwrite, stem + ".pdf", previews, blank ? stem + "-blank.pdf" : null, report(stem));
  }

  /** The name of the report page of files with a stem. */
  public static String report(String stem) {
    return stem + "-report.html";
  }

  private List<String> names() {
    List<String> names = new ArrayList<>(List.of(main));
    names.addAll(parts);
    names.addAll(previews);
    if (blank != null) {
      names.add(blank);
    }
    names.add(report);
    names.add(json());
    if (issue != null) {
      names.add(issue.manifestName());
    }
    return names;
  }

  private String json() {
    return issue == null ? JSON : issue.json();
  }

  /** The same as an issue. */
  RunFiles of(IssueFiles its) {
    return new RunFiles(out, overwrite, main, previews, blank, report, parts, its);
  }

  /** The same with the files that the first is split into. */
  RunFiles in(Collection<String> names) {
    return new RunFiles(out, overwrite, main, previews, blank, report, List.copyOf(names), issue);
  }

  /**
   * Refuses, before anything is done, what could not be written in the end, or would overwrite a
   * picture that is read.
   *
   * @param read flats with their pictures
   */
  public void check(List<FlatSet.Item> read) throws Refusal {
    List<Fault> obstacles =
        new Outputs(out, overwrite)
            .obstacles(names(), read.stream().map(item -> item.file().path()));
    if (!obstacles.isEmpty()) {
      throw Refusal.input(obstacles);
    }
  }

  /**
   * Writes all files, or none; writes none in a check.
   *
   * @param mainFile the file that is sent out
   * @param split the files that it is split into, by their names
   * @param pictures the previews, one for each name
   * @param blankFile the file without flats, where it has a name
   * @param findings the findings of the run
   * @param facts what the pack states besides its sheets
   * @param how whether this is a check, and what is reported
   */
  public RunResult write(
      byte[] mainFile,
      Map<String, byte[]> split,
      List<byte[]> pictures,
      byte @Nullable [] blankFile,
      Findings findings,
      PackFacts facts,
      RunOptions how)
      throws Refusal {
    Revised revised = how.revised();
    ReportOptions reporting = how.reporting();
    boolean written = !how.check();
    List<String> stale =
        overwrite && written ? EarlierFiles.stale(out, names()) : List.<String>of();
    WrittenFiles made =
        new WrittenFiles(out, names(), main, mainFile.length, report, written, stale);
    ReportContent account = ReportContent.of(findings, reporting, made);
    try {
      byte[] json =
          FitJson.bytes(
              findings.title(),
              facts,
              DensityTargets.DEFAULT,
              reporting.limits(),
              findings.weight(),
              findings.sheets(),
              names());
      Map<String, byte[]> files = new LinkedHashMap<>();
      files.put(main, mainFile);
      files.putAll(split);
      for (int i = 0; i < previews.size(); i++) {
        files.put(previews.get(i), pictures.get(i));
      }
      if (blank != null) {
        files.put(blank, Objects.requireNonNull(blankFile, "the file without flats"));
      }
      files.put(
          report, ReportPage.of(account, pictures, revised == null ? null : revised.changed()));
      files.put(json(), json);
      if (issue != null) {
        files.put(issue.manifestName(), issue.manifest().apply(files));
      }
      if (written && issue != null) {
        Outputs.writeWhole(out, files);
      } else if (written) {
        new Outputs(out, overwrite).write(files);
        for (String name : stale) {
          Files.deleteIfExists(out.resolve(name));
        }
      }
      return new RunResult(account, json);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
