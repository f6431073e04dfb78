package dev.placket.benchmarks;

import dev.placket.benchmarks.pages.PageException;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Kills commands that write at random moments, and looks at what they leave. */
@Command(
    name = "kills",
    description = {
      "Kills each command that writes at random moments. Every file is then the old or the new one,"
          + " whole; an issue is whole or absent; and the command, run again, ends as if it had"
          + " never been killed.",
      "1 is the exit code if that is not so."
    },
    mixinStandardHelpOptions = true)
final class KillsCommand implements Callable<Integer> {
  private static final String FLAT =
      "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 120'><path id='body'"
          + " d='M10 10H90V110H10Z' fill='none' stroke='#000' stroke-width='2'/></svg>";

  private static final String PACK =
      """
      format: placket-pack/1
      fields: {style-number: MG-1, revision: A, date: "2027-02-11", note: NOTE}
      measurements: {unit: cm, sizes: [S, M], sample: M, csv: points.csv}
      samples: {files: fits.csv, checks: {fit: {stage: first fit}}}
      sheets:
        flat:
          name: "{note}"
          areas: [view]
          windows: {view: }
          flats:
            front:
              file: front.svg
              role: front
              callouts: {body: {point: body, text: Body, mark: MARK}}
        check: {name: Check, check: fit, areas: [points], tables: {points: {check: points}}}
      """;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Mixin private Placket placket = new Placket();

  @Option(names = "--kills", paramLabel = "N", description = "Of each command (default: 100).")
  private int kills = 100;

  @Option(
      names = "--of",
      paramLabel = "NAME",
      split = ",",
      description = "Of these commands (default: all).")
  private List<String> of = List.of();

  @Option(names = "--seed", paramLabel = "N", description = "Of the moments (default: 1).")
  private long seed = 1;

  /**
   * A command and what its folder has before.
   *
   * @param name the command's
   * @param files the files that are changed first
   * @param arguments with the folder as the working one
   */
  private record Job(String name, Map<String, String> files, List<String> arguments) {}

  /** What was left: how often nothing was changed, all was, or whole files of both were there. */
  private static final class Tally {
    private int old;
    private int made;
    private int between;
    private int remains;
    private final List<String> wrong = new ArrayList<>();
  }

  @Override
  public Integer call() throws IOException {
    placket.need();
    PrintWriter out = spec.commandLine().getOut();
    Provenance.lines(seed).forEach(l -> out.println("# " + l));
    boolean right = true;
    Random random = new Random(seed);
    for (Job job : jobs()) {
      if (!of.isEmpty() && !of.contains(job.name)) {
        continue;
      }
      Path work = Files.createTempDirectory("kills");
      try {
        Tally tally = killed(job, work, random);
        right &= tally.wrong.isEmpty();
        out.printf(
            "%s: %d kills: %d old, %d new, %d whole files of both, %d wrong; %d left a file of"
                + " their own%n",
            job.name,
            kills,
            tally.old,
            tally.made,
            tally.between,
            tally.wrong.size(),
            tally.remains);
        tally.wrong.forEach(w -> out.println("  " + w));
        out.flush();
      } finally {
        Runs.delete(work);
      }
    }
    return right ? 0 : 1;
  }

  private static List<Job> jobs() {
    String pack = PACK.replace("MARK", "1").replace("NOTE", "new");
    String marks = PACK.replace("MARK", "new").replace("NOTE", "new");
    return List.of(
        new Job("fit", Map.of("pack.yaml", pack), List.of("fit", "pack.yaml", "--overwrite")),
        new Job("issue", Map.of("pack.yaml", pack), List.of("issue", "pack.yaml")),
        new Job("number", Map.of("pack.yaml", marks), List.of("number", "pack.yaml")),
        new Job(
            "form", Map.of("pack.yaml", pack), List.of("form", "pack.yaml", "fit", "--overwrite")),
        new Job(
            "revise", Map.of("pack.yaml", pack), List.of("revise", "pack.yaml", "fit", "--write")),
        new Job(
            "prepare",
            Map.of("pack.yaml", pack),
            List.of("prepare", "front.svg", "--at", "80mm", "--out", "copies", "--overwrite")));
  }

  /** The folder with what an earlier run made from a pack of other words. */
  private void prepare(Job job, Path folder) throws IOException {
    Files.createDirectories(folder);
    Files.writeString(folder.resolve("front.svg"), FLAT);
    Files.writeString(
        folder.resolve("points.csv"), "code,name,tolerance,value,grade\nA,Chest,1,50,2\n");
    Files.writeString(
        folder.resolve("fits.csv"),
        "sample,size,point,asked,tolerance,ours,revised\nfit,M,A,,,51.5,51\n");
    String earlier = PACK.replace("MARK", "1").replace("NOTE", "old");
    Files.writeString(folder.resolve("pack.yaml"), earlier);
    if (job.name.equals("fit")) {
      need(run(folder, job.arguments, Long.MAX_VALUE));
    }
    Files.writeString(folder.resolve("fit.xlsx"), "an earlier form");
    for (Map.Entry<String, String> file : job.files.entrySet()) {
      Files.writeString(folder.resolve(file.getKey()), file.getValue());
    }
  }

  private static void need(int code) {
    if (!Runs.placed(code)) {
      throw new PageException("a run that was not killed ended with " + code);
    }
  }

  private Tally killed(Job job, Path work, Random random) throws IOException {
    Path first = work.resolve("first");
    prepare(job, first);
    Map<String, byte[]> before = files(first);
    long start = System.nanoTime();
    need(run(first, job.arguments, Long.MAX_VALUE));
    long whole = System.nanoTime() - start;
    Map<String, byte[]> after = files(first);
    Tally tally = new Tally();
    for (int i = 0; i < kills; i++) {
      Path folder = work.resolve("run" + i);
      write(folder, before);
      // Half of them in the last fifth, in which files are written.
      double share = random.nextBoolean() ? random.nextDouble() : 0.8 + 0.3 * random.nextDouble();
      run(folder, job.arguments, (long) (share * whole));
      judge(tally, job.name + " " + i, before, after, files(folder));
      again(tally, job, i, folder, after);
      Runs.delete(folder);
    }
    return tally;
  }

  private static void judge(
      Tally tally,
      String name,
      Map<String, byte[]> before,
      Map<String, byte[]> after,
      Map<String, byte[]> now) {
    int old = 0;
    int made = 0;
    TreeSet<String> all = new TreeSet<>(before.keySet());
    all.addAll(after.keySet());
    for (String file : all) {
      boolean isOld = same(before.get(file), now.get(file));
      boolean isNew = same(after.get(file), now.get(file));
      if (!isOld && !isNew) {
        tally.wrong.add(name + ": " + file + " is neither the old nor the new one");
      }
      old += isOld && !isNew ? 1 : 0;
      made += isNew && !isOld ? 1 : 0;
    }
    if (name.startsWith("issue") && old > 0 && made > 0) {
      tally.wrong.add(name + ": a part of an issue");
    }
    tally.old += made == 0 ? 1 : 0;
    tally.made += old == 0 && made > 0 ? 1 : 0;
    tally.between += old > 0 && made > 0 ? 1 : 0;
    tally.remains += all.containsAll(now.keySet()) ? 0 : 1;
  }

  /** What was killed is run again, and ends as if it never had been. */
  private void again(Tally tally, Job job, int number, Path folder, Map<String, byte[]> after)
      throws IOException {
    int code = run(folder, job.arguments, Long.MAX_VALUE);
    Map<String, byte[]> now = files(folder);
    boolean same = after.keySet().stream().allMatch(f -> same(after.get(f), now.get(f)));
    if (!Runs.placed(code) || !same) {
      tally.wrong.add(job.name + " " + number + ": run again, it ends with " + code);
    }
  }

  private static boolean same(byte @Nullable [] a, byte @Nullable [] b) {
    return a == null || b == null ? a == b : Arrays.equals(a, b);
  }

  /** Runs the command in a folder and kills it after so many nanoseconds. */
  private int run(Path folder, List<String> arguments, long nanos) {
    List<String> command = new ArrayList<>(placket.command());
    command.addAll(arguments);
    try {
      ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
      builder.redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD);
      Process process = builder.start();
      if (!process.waitFor(nanos, TimeUnit.NANOSECONDS)) {
        process.destroyForcibly();
      }
      return process.waitFor();
    } catch (IOException e) {
      throw new PageException(command.get(0) + ": cannot be run (" + e.getMessage() + ")");
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new PageException("interrupted while running " + String.join(" ", command));
    }
  }

  private static void write(Path folder, Map<String, byte[]> files) throws IOException {
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      Path to = folder.resolve(file.getKey());
      Files.createDirectories(to.getParent());
      Files.write(to, file.getValue());
    }
  }

  private static Map<String, byte[]> files(Path folder) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes its) throws IOException {
            files.put(folder.relativize(file).toString(), Files.readAllBytes(file));
            return FileVisitResult.CONTINUE;
          }
        });
    return new LinkedHashMap<>(files);
  }
}
