package dev.placket.packs.run;

import dev.placket.layout.density.DensityTargets;
import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.json.FitJson;
import dev.placket.packs.output.Outputs;
import dev.placket.packs.page.PdfPack;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.report.Account;
import dev.placket.packs.report.Findings;
import dev.placket.packs.report.Made;
import dev.placket.packs.report.ReportPage;
import dev.placket.packs.report.RunResult;
import dev.placket.packs.report.Telling;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The files of a run that makes a PDF.
 *
 * @param out the folder they go to
 * @param name what they are called, before the ending
 * @param previews names of the previews, one for each sheet
 * @param blank whether the sheets are also written without flats
 * @param replace whether files that are there may be written anew
 */
record RunFiles(Path out, String name, List<String> previews, boolean blank, boolean replace) {
  private static final String JSON = "fit.json";

  private List<String> names() {
    List<String> names = new ArrayList<>(List.of(pdf()));
    names.addAll(previews);
    if (blank) {
      names.add(blankPdf());
    }
    names.add(report());
    names.add(JSON);
    return names;
  }

  /**
   * Refuses, before anything is done, what could not be written in the end, or would overwrite a
   * picture that is read.
   *
   * @param read the pictures
   */
  void check(Stream<FlatSet.Item> read) throws Refusal {
    List<String> obstacles =
        new Outputs(out, replace).obstacles(names(), read.map(item -> item.file().path()));
    if (!obstacles.isEmpty()) {
      throw Refusal.input(obstacles);
    }
  }

  /**
   * Draws the previews and writes all files.
   *
   * @param pdf the file of all pages
   * @param pages one for each sheet
   * @param findings what the run found out
   * @param fields the header's values by their names
   * @param telling how it is told
   */
  RunResult write(
      byte[] pdf,
      List<PdfPack.Filled> pages,
      Findings findings,
      Map<String, String> fields,
      Telling telling)
      throws Refusal {
    Made made = new Made(out, names(), pdf(), pdf.length, report());
    Account account = Account.of(findings, telling, made);
    try {
      byte[] json =
          FitJson.bytes(
              findings.title(),
              fields,
              DensityTargets.DEFAULT,
              telling.limits(),
              findings.weight(),
              findings.sheets());
      Map<String, byte[]> files = new LinkedHashMap<>();
      files.put(pdf(), pdf);
      List<byte[]> pictures = new ArrayList<>();
      pages.forEach(p -> pictures.add(PdfPack.preview(p)));
      for (int i = 0; i < pages.size(); i++) {
        files.put(previews.get(i), pictures.get(i));
      }
      if (blank) {
        files.put(blankPdf(), new PdfPack(findings.title()).pdf(withoutFlats(pages)));
      }
      files.put(report(), ReportPage.of(account, pictures));
      files.put(JSON, json);
      new Outputs(out, replace).write(files);
      return new RunResult(account, json);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<PdfPack.Filled> withoutFlats(List<PdfPack.Filled> pages) {
    List<PdfPack.Filled> bare = new ArrayList<>();
    pages.forEach(p -> bare.add(new PdfPack.Filled(p.page(), List.of())));
    return bare;
  }

  private String pdf() {
    return name + ".pdf";
  }

  private String report() {
    return name + "-report.html";
  }

  private String blankPdf() {
    return name + "-blank.pdf";
  }
}
