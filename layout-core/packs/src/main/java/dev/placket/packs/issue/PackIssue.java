package dev.placket.packs.issue;

import dev.placket.packs.description.Described;
import dev.placket.packs.description.Pack;
import dev.placket.packs.description.PaperChoice;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.report.RunResult;
import dev.placket.packs.run.IssueFiles;
import dev.placket.packs.run.Packs;
import dev.placket.packs.run.RunOptions;
import dev.placket.pictures.fault.Fault;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Issues a revision of a style.
 *
 * @param described the description
 * @param root the folder that has a folder for each issue
 * @param made the program and its version, for the manifest
 * @param marked whether changes since the issue before are marked on the sheets
 */
public record PackIssue(Described described, Path root, String made, boolean marked) {
  /**
   * What came of it.
   *
   * @param folder the issue
   * @param before the issue before it; null for the first
   * @param result what was written; null where this very issue exists already
   */
  public record Issued(Path folder, @Nullable Path before, @Nullable RunResult result) {}

  /**
   * Writes the issue, whole or not at all.
   *
   * @param paper the paper instead of the described one; null for that
   * @param how how it is made; its folder is not used
   * @throws Refusal if the description names no issue, its revision was issued with other content
   *     or is older than the last, an input is at fault or the flats have no room
   */
  public Issued issue(@Nullable PaperChoice paper, RunOptions how) throws Refusal {
    IssueName name = IssueName.of(described, fields());
    Map<String, String> inputs = InputFiles.digests(described, how.ranges());
    List<IssueFolder.Found> earlier = IssueFolder.of(root, name.style());
    Path folder = root.resolve(name.stem());
    for (IssueFolder.Found each : earlier) {
      if (each.manifest().revision().equals(name.revision())) {
        return again(name, paper, inputs, each, earlier);
      }
    }
    Path before = earlier.isEmpty() ? null : earlier.get(earlier.size() - 1).folder();
    if (before != null) {
      checkOrder(name, earlier.get(earlier.size() - 1).manifest());
    }
    if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      throw Refusal.input(
          Fault.output(folder, "exists and is no issue of this style").remedy("move it away"));
    }
    IssueFiles files =
        new IssueFiles(name.stem(), outputs -> manifest(name, named(paper), inputs, outputs));
    RunOptions its = how.withOut(folder).withIssue(files);
    if (before == null) {
      return new Issued(folder, null, Packs.ofDescription(described, paper, its));
    }
    // Twice: what changed is known from the values of the pack.
    RunResult plain = Packs.ofDescription(described, paper, its.withCheck(true));
    Pack pack = described.pack();
    IssueChanges.Next next = IssueChanges.next(before, plain.json(), pack.history().log());
    Described logged =
        new Described(
            described.file(), pack.with(next.history()), described.places(), described.faults());
    RunResult result =
        Packs.ofDescription(
            logged, paper, its.withRevised(marked ? next.revised() : next.revised().unmarked()));
    return new Issued(folder, before, result);
  }

  private static String named(@Nullable PaperChoice paper) {
    return paper == null ? "" : paper.paper().name();
  }

  private byte[] manifest(
      IssueName name, String paper, Map<String, String> inputs, Map<String, byte[]> outputs) {
    Map<String, String> digests = new LinkedHashMap<>();
    outputs.forEach((file, bytes) -> digests.put(file, InputFiles.digest(bytes)));
    try {
      return new IssueManifest(
              name.style(), name.revision(), name.date(), paper, made, inputs, digests)
          .bytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Issued again(
      IssueName name,
      @Nullable PaperChoice paper,
      Map<String, String> inputs,
      IssueFolder.Found same,
      List<IssueFolder.Found> all)
      throws Refusal {
    IssueManifest its = same.manifest();
    boolean asked = its.date().equals(name.date()) && its.paper().equals(named(paper));
    if (its.inputs().equals(inputs) && asked) {
      int at = all.indexOf(same);
      return new Issued(same.folder(), at == 0 ? null : all.get(at - 1).folder(), null);
    }
    String next = RevisionSeries.next(name.revision());
    Fault fault =
        Fault.content(
            described.file(),
            "revision "
                + name.revision()
                + " of "
                + name.style()
                + " was issued on "
                + its.date()
                + " with other content");
    throw Refusal.input(
        fault.remedy(
            next.isEmpty()
                ? "state the next revision"
                : "state revision " + next + " and its date"));
  }

  private void checkOrder(IssueName name, IssueManifest last) throws Refusal {
    boolean older =
        RevisionSeries.compare(name.revision(), last.revision()).orElse(1) < 0
            || name.date().compareTo(last.date()) < 0;
    if (older) {
      String next = RevisionSeries.next(last.revision());
      throw Refusal.input(
          Fault.content(
                  described.file(),
                  "revision %s of %s is older than the last issue, %s of %s"
                      .formatted(name.revision(), name.date(), last.revision(), last.date()))
              .remedy(
                  next.isEmpty()
                      ? "state a later revision and date"
                      : "state revision " + next + " and its date"));
    }
  }

  private Map<String, String> fields() {
    List<String> first = List.of(described.pack().languages().get(0));
    Map<String, String> fields = new LinkedHashMap<>();
    described
        .pack()
        .fields()
        .forEach(
            (field, words) -> fields.put(field, words.in(first).stream().findFirst().orElse("")));
    return fields;
  }
}
