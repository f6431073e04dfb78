package dev.placket.benchmarks.rasters;

import dev.placket.benchmarks.rasters.Judgement.Verdict;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Judges all pictures of some folders and adds up, by the endings of their names. */
public final class PictureFolder {
  private final Judging judging;
  private final Map<String, String> known = new TreeMap<>();
  private final Map<String, Map<Verdict, Integer>> counts = new TreeMap<>();
  private int faults;

  /**
   * Reads the list of pictures that may differ.
   *
   * @param work a folder for what other programs write
   * @param known a name, a tab and a reason on each line, or null
   * @throws IOException if a file cannot be read or written
   */
  public PictureFolder(Path work, @Nullable Path known) throws IOException {
    this.judging = new Judging(new SecondLibraries(work));
    if (known != null) {
      for (String line : Files.readAllLines(known)) {
        String[] parts = line.split("\t", 2);
        if (parts.length == 2) {
          this.known.put(parts[0], parts[1]);
        }
      }
    }
  }

  /**
   * Judges files, or those of folders that are no drawings.
   *
   * @param all whether to print what is right as well
   * @throws IOException if a folder cannot be read
   */
  public void judge(List<Path> from, boolean all, Consumer<String> out) throws IOException {
    for (Path file : files(from)) {
      Judgement j = judging.judge(file);
      String reason = known.get(j.file());
      boolean fault = j.verdict() == Verdict.CRASHED || j.verdict() == Verdict.WRONG;
      faults += fault && reason == null ? 1 : 0;
      counts
          .computeIfAbsent(ending(file), e -> new EnumMap<>(Verdict.class))
          .merge(j.verdict(), 1, Integer::sum);
      if (all || j.verdict() != Verdict.RIGHT) {
        out.accept(j.line() + (fault && reason != null ? "\tknown: " + reason : ""));
      }
    }
  }

  private static List<Path> files(List<Path> from) throws IOException {
    List<Path> files = new ArrayList<>();
    for (Path path : from) {
      try (Stream<Path> found = Files.walk(path)) {
        found
            .filter(Files::isRegularFile)
            .filter(f -> ending(f).matches("bmp|dib|gif|jpe?g|png|tiff?|webp"))
            .sorted()
            .forEach(files::add);
      }
    }
    return files;
  }

  private static String ending(Path file) {
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    return name.substring(name.lastIndexOf('.') + 1);
  }

  /** A line for each ending of a name. */
  public List<String> totals() {
    List<String> lines = new ArrayList<>();
    counts.forEach(
        (ending, n) -> {
          StringBuilder line = new StringBuilder("# " + ending + ":");
          for (Verdict verdict : Verdict.values()) {
            line.append(' ').append(verdict).append(' ').append(n.getOrDefault(verdict, 0));
          }
          lines.add(line.toString());
        });
    return lines;
  }

  /** How many crash, or are wrong without a note and not listed. */
  public int faults() {
    return faults;
  }
}
