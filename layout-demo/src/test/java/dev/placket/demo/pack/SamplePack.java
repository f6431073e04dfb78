package dev.placket.demo.pack;

import dev.placket.demo.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A pack with samples in a folder, for tests. Values are invented. */
final class SamplePack {
  /** Two points with a tolerance, one with two, one without. */
  static final String TEXT =
      """
      format: placket-pack/1
      measurements:
        unit: cm
        sizes: [S, M, L]
        sample: M
        points:
          A: {name: Half chest, tolerance: 1, value: 50, grade: 2}
          B: {name: Sleeve, tolerance: +1 -0.5, value: 60, grade: 1}
          C: {name: Cuff, value: 15, grade: 0}
      samples:
        files: fits.csv
        checks:
          fit-1: {stage: first fit, round: 1, verdict: resubmit, received: 2026-12-01}
          fit-2: {stage: second fit, round: 2}
          set: {stage: size set}
          next: {stage: pre-production, sizes: M}
      sheets:
        one: {name: One, check: fit-1, areas: [points, comments], tables: {points: {check: points}, comments: {check: comments}}}
        two: {name: Two, check: fit-2, areas: [facts, points, comments], rows: [20mm, 1fr, 1fr], tables: {facts: {check: header}, points: {check: points}, comments: {check: comments}}}
        set: {name: Set, check: set, areas: [points, totals], tables: {points: {check: points}, totals: {check: totals}}}
        next: {name: Next, check: next, areas: [points, comments], tables: {points: {check: points}, comments: {check: comments}}}
      """;

  static final String HEADINGS =
      "sample,size,point,asked,tolerance,factory,ours,revised,decision,comment,number,action,state\n";

  private SamplePack() {}

  /** Writes the description and a file of rows under {@link #HEADINGS}. */
  static Path write(Path folder, String rows) throws IOException {
    return writeFile(folder, HEADINGS + rows);
  }

  /** Writes the description and a file. */
  static Path writeFile(Path folder, String csv) throws IOException {
    Files.writeString(folder.resolve("fits.csv"), csv);
    return Files.writeString(folder.resolve("pack.yaml"), TEXT);
  }

  static Run fit(Path pack) {
    return Run.of("fit", pack, "--out", pack.resolveSibling("out"), "--overwrite");
  }
}
