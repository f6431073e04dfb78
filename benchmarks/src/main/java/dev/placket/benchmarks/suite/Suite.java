package dev.placket.benchmarks.suite;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.typeface.Typefaces;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A folder of drawings, each judged on its own, so that none takes others with it. */
public final class Suite {
  private static final int SECONDS = 30;

  private final Path root;
  private final Judge judge;
  private final SecondRenderer second;

  /**
   * A suite to be judged.
   *
   * @param root of the folder tree with the drawings
   * @param fonts a folder of TrueType files for their text, or null
   * @param second the name of the second renderer
   * @param work a folder for what it needs
   * @throws PictureException if a font cannot be read
   */
  public Suite(Path root, @Nullable Path fonts, String second, Path work)
      throws IOException, PictureException {
    this.root = root;
    this.second = new SecondRenderer(second, fonts, work);
    this.judge = new Judge(root, fonts == null ? Typefaces.SHIPPED : typefaces(fonts), this.second);
  }

  private static Typefaces typefaces(Path folder) throws IOException, PictureException {
    List<PictureSource> files = new ArrayList<>();
    // The plain face of a family before its others.
    Comparator<Path> plainFirst =
        Comparator.comparing((Path p) -> !p.getFileName().toString().contains("Regular"))
            .thenComparing(Comparator.naturalOrder());
    for (Path p : under(folder, ".ttf").stream().sorted(plainFirst).toList()) {
      files.add(PictureSource.of(p));
    }
    return Typefaces.of(files);
  }

  /** What the second renderer is, and its version. */
  public String second() {
    return second.version();
  }

  /** All drawings, in the order of their paths; two at a time. */
  public List<Judged> judge() throws IOException {
    List<Path> files = under(root, ".svg");
    ExecutorService workers = Executors.newFixedThreadPool(2, Suite::daemon);
    List<FutureTask<Judged>> tasks = new ArrayList<>();
    for (Path file : files) {
      FutureTask<Judged> task = new FutureTask<>(() -> guarded(file));
      tasks.add(task);
      workers.execute(task);
    }
    List<Judged> all = new ArrayList<>();
    try {
      for (FutureTask<Judged> task : tasks) {
        all.add(task.get());
      }
    } catch (ExecutionException e) {
      throw new IllegalStateException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } finally {
      workers.shutdownNow();
    }
    return all;
  }

  /** In a thread of its own, which is left behind if it does not end. */
  private Judged guarded(Path file) throws InterruptedException {
    FutureTask<Judged> task = new FutureTask<>(() -> judge.judge(file));
    daemon(task).start();
    try {
      return task.get(SECONDS, TimeUnit.SECONDS);
    } catch (ExecutionException e) {
      return judge.crashed(file, e.getCause() == null ? e : e.getCause());
    } catch (TimeoutException e) {
      return judge.crashed(file, new TimeoutException("no end after " + SECONDS + " s"));
    }
  }

  private static Thread daemon(Runnable work) {
    Thread thread = new Thread(work, "suite");
    thread.setDaemon(true);
    return thread;
  }

  private static List<Path> under(Path folder, String ending) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(p -> p.getFileName().toString().endsWith(ending))
          .filter(Files::isRegularFile)
          .sorted()
          .toList();
    }
  }
}
