package dev.placket.benchmarks.workbooks;

import dev.placket.benchmarks.outside.PlacketJars;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * What came of one workbook.
 *
 * @param file its name
 * @param outcome how the run ended
 * @param seconds how long it took, the second reader not counted
 * @param opened whether the workbook opens in the second reader
 * @param opens whether the copy does, with all pictures; true where there is none
 * @param differs the first part of the copy that differs and should not; null for none
 * @param said why it was not placed; blank where it was
 */
public record WorkbookPlacing(
    String file,
    Outcome outcome,
    double seconds,
    boolean opened,
    boolean opens,
    @Nullable String differs,
    String said) {
  /** How a run may end. */
  public enum Outcome {
    /** A copy was written. */
    PLACED,
    /** Nothing fits. */
    NO_ROOM,
    /** The workbook cannot be used, and a message says why. */
    REFUSED,
    /** An internal error, or no end. */
    CRASHED
  }

  private static final int LIMIT_SECONDS = 120;

  /** Runs one workbook. */
  public static WorkbookPlacing of(
      PlacketJars placket, Path flats, int pictures, Path workbook, Path out) throws IOException {
    PlacketJars.Ended ended =
        placket.run(
            LIMIT_SECONDS,
            "fit",
            flats.toString(),
            "--onto",
            workbook.toString(),
            "--out",
            out.toString());
    Outcome outcome =
        switch (ended.code()) {
          case 0, 3 -> Outcome.PLACED;
          case 2 -> Outcome.REFUSED;
          case 4 -> Outcome.NO_ROOM;
          default -> Outcome.CRASHED;
        };
    boolean opened = SecondReader.pictures(workbook) != SecondReader.CLOSED;
    Path copy = out.resolve(workbook.getFileName());
    boolean made = outcome == Outcome.PLACED && Files.exists(copy);
    return new WorkbookPlacing(
        workbook.getFileName().toString(),
        outcome,
        ended.seconds(),
        opened,
        outcome != Outcome.PLACED || (made && SecondReader.pictures(copy) >= pictures),
        made ? Difference.first(workbook, copy) : null,
        outcome == Outcome.PLACED ? "" : why(ended.said(), workbook));
  }

  /** The first line, with the file's name in place of its path. */
  private static String why(String said, Path workbook) {
    return said.lines()
        .findFirst()
        .orElse("")
        .replaceFirst("^placket: ", "")
        .replace(workbook.toString(), workbook.getFileName().toString())
        .replace('\t', ' ');
  }

  /** Whether the copy is as it should be. */
  public boolean sound() {
    return outcome != Outcome.CRASHED && (opens || !opened) && differs == null;
  }

  /** The heading of {@link #line}. */
  public static final String HEAD = "file\toutcome\tseconds\topened\topens\tdiffers\tsaid";

  /** One line, parted by tabs. */
  public String line() {
    return String.format(
        Locale.ROOT,
        "%s\t%s\t%.1f\t%s\t%s\t%s\t%s",
        file,
        outcome.toString().toLowerCase(Locale.ROOT).replace('_', ' '),
        seconds,
        opened,
        outcome == Outcome.PLACED ? opens : "-",
        differs == null ? "-" : differs,
        said.isEmpty() ? "-" : said);
  }
}
