package dev.placket.packs.run;

import dev.placket.packs.compose.PackLimits;
import dev.placket.packs.description.RangeReader;
import dev.placket.packs.flats.Reading;
import dev.placket.packs.report.ReportOptions;
import dev.placket.packs.revision.Revised;
import dev.placket.pictures.prepare.WeightPlan;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * What is written where, and how, whatever the flats come from.
 *
 * <p>Start with {@link #into} and state what differs from the defaults.
 *
 * @param out the folder that files are written to; made if it does not exist
 * @param overwrite whether existing files are overwritten
 * @param check whether everything is done but writing files
 * @param blank whether the sheets are also written without flats
 * @param allowSoft whether pictures may grow until they are soft
 * @param maxBytes the maximum size of the PDF in bytes
 * @param limits the maximum size of the pack
 * @param reading how pictures are read
 * @param reporting what the run reports, and how
 * @param ranges reads ranges of workbooks that a description names
 * @param issue that the files are an issue; null for a folder that is written again and again
 * @param revised what is marked on the sheets as changed; null for nothing
 */
public record RunOptions(
    Path out,
    boolean overwrite,
    boolean check,
    boolean blank,
    boolean allowSoft,
    long maxBytes,
    PackLimits limits,
    Reading reading,
    ReportOptions reporting,
    RangeReader ranges,
    @Nullable IssueFiles issue,
    @Nullable Revised revised) {
  /** New files in a folder; no file is overwritten. */
  public static RunOptions into(Path out) {
    return new RunOptions(
        out,
        false,
        false,
        false,
        false,
        WeightPlan.DEFAULT_LIMIT,
        PackLimits.DEFAULT,
        Reading.DEFAULT,
        ReportOptions.USUAL,
        RangeReader.NONE,
        null,
        null);
  }

  /** The same with existing files overwritten, or not. */
  public RunOptions withOverwrite(boolean yes) {
    return new RunOptions(
        out, yes, check, blank, allowSoft, maxBytes, limits, reading, reporting, ranges, issue,
        revised);
  }

  /** The same with everything done but writing files, or not. */
  public RunOptions withCheck(boolean yes) {
    return new RunOptions(
        out, overwrite, yes, blank, allowSoft, maxBytes, limits, reading, reporting, ranges, issue,
        revised);
  }

  /** The same with the sheets also written without flats, or not. */
  public RunOptions withBlank(boolean yes) {
    return new RunOptions(
        out, overwrite, check, yes, allowSoft, maxBytes, limits, reading, reporting, ranges, issue,
        revised);
  }

  /** The same with pictures that may grow until they are soft, or not. */
  public RunOptions withAllowSoft(boolean yes) {
    return new RunOptions(
        out, overwrite, check, blank, yes, maxBytes, limits, reading, reporting, ranges, issue,
        revised);
  }

  /** The same with another maximum size of the PDF in bytes. */
  public RunOptions withMaxBytes(long bytes) {
    return new RunOptions(
        out, overwrite, check, blank, allowSoft, bytes, limits, reading, reporting, ranges, issue,
        revised);
  }

  /** The same with another maximum size of the pack. */
  public RunOptions withLimits(PackLimits l) {
    return new RunOptions(
        out, overwrite, check, blank, allowSoft, maxBytes, l, reading, reporting, ranges, issue,
        revised);
  }

  /** The same with pictures read in another way. */
  public RunOptions withReading(Reading r) {
    return new RunOptions(
        out, overwrite, check, blank, allowSoft, maxBytes, limits, r, reporting, ranges, issue,
        revised);
  }

  /** The same reported in another way. */
  public RunOptions withReporting(ReportOptions t) {
    return new RunOptions(
        out, overwrite, check, blank, allowSoft, maxBytes, limits, reading, t, ranges, issue,
        revised);
  }

  /** The same with another reader for ranges of workbooks. */
  public RunOptions withRanges(RangeReader r) {
    return new RunOptions(
        out, overwrite, check, blank, allowSoft, maxBytes, limits, reading, reporting, r, issue,
        revised);
  }

  /** The same for another folder. */
  public RunOptions withOut(Path folder) {
    return new RunOptions(
        folder, overwrite, check, blank, allowSoft, maxBytes, limits, reading, reporting, ranges,
        issue, revised);
  }

  /** The same as an issue. */
  public RunOptions withIssue(IssueFiles i) {
    return new RunOptions(
        out, overwrite, check, blank, allowSoft, maxBytes, limits, reading, reporting, ranges, i,
        revised);
  }

  /** The same with marks of a revision. */
  public RunOptions withRevised(@Nullable Revised r) {
    return new RunOptions(
        out, overwrite, check, blank, allowSoft, maxBytes, limits, reading, reporting, ranges,
        issue, r);
  }
}
