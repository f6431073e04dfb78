package dev.placket.demo.prepare;

import dev.placket.layout.density.PixelSize;
import dev.placket.layout.units.Length;
import dev.placket.packs.flats.Differences;
import dev.placket.packs.output.Outputs;
import dev.placket.packs.output.Staging;
import dev.placket.packs.refusal.PackSetting;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.Picture;
import dev.placket.pictures.RasterPicture;
import dev.placket.pictures.base.FineDetail;
import dev.placket.pictures.base.Ground;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.prepare.FineLines;
import dev.placket.pictures.prepare.ReadyPicture;
import dev.placket.pictures.prepare.ResolvedShare;
import dev.placket.pictures.prepare.ToPrint;
import dev.placket.pictures.prepare.WeightPlan;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntConsumer;
import org.jspecify.annotations.Nullable;

/** Prepares all pictures, several at a time; writes all of them or none. */
record PrepareRun(
    List<Job> jobs, long limit, long mostPixels, Path out, boolean overwrite, boolean strict) {
  /** What one large picture may take while it is worked on: so many bytes of heap. */
  private static final long ROOM = 192L << 20;

  /** Most pixels of a copy of a drawing, if nothing else is asked for. */
  static final long MOST_PIXELS = 200_000_000;

  private static final int TRIES = 3;

  /**
   * The result of a run.
   *
   * @param done the pictures, in order
   * @param plan the densities that the weight asked for; null if none was needed
   */
  record Ready(List<PreparedPicture> done, @Nullable WeightPlan plan) {
    /** Bytes of all copies. */
    long weight() {
      return done.stream().mapToLong(PreparedPicture::bytesAfter).sum();
    }
  }

  /**
   * Runs; again with lower densities if the copies are over the size limit.
   *
   * @param progress receives the number of prepared pictures after each
   * @throws Refusal naming every picture with a fault; nothing is written then
   */
  Ready run(IntConsumer progress) throws Refusal {
    checkNames();
    List<Fault> obstacles =
        new Outputs(out, overwrite).obstacles(jobs.stream().map(Job::output).toList());
    if (!obstacles.isEmpty()) {
      throw Refusal.input(obstacles);
    }
    try {
      try (Staging parts = Staging.open(out, overwrite)) {
        Ready ready = new Ready(all(jobs, parts, progress), null);
        if (strict) {
          Differences.refuse(ready.done().stream().flatMap(d -> d.differences().stream()).toList());
        }
        if (ready.weight() > limit) {
          WeightKeeper keeper = WeightKeeper.of(jobs);
          long aim = limit;
          for (int i = 0; i < TRIES && ready.weight() > limit; i++) {
            WeightPlan plan = keeper.plan(aim);
            parts.restart();
            ready = new Ready(all(keeper.kept(plan), parts, progress), plan);
            // What was foreseen too light is asked for lighter, by as much.
            aim = (long) (aim * Math.min(1, plan.total() / ready.weight()));
          }
        }
        parts.finish();
        return ready;
      }
    } catch (IOException e) {
      throw Outputs.refused(out, e);
    }
  }

  private void checkNames() throws Refusal {
    Map<String, Path> taken = new HashMap<>();
    for (Job job : jobs) {
      Path other = taken.put(job.output(), job.file());
      if (other != null) {
        throw Refusal.input(
            Fault.output(
                    job.file(),
                    "its copy would have the same name, " + job.output() + ", as that of " + other)
                .remedy("rename one")
                .remedy("prepare them in two runs"));
      }
      Path copy = out.resolve(job.output()).toAbsolutePath().normalize();
      for (Job original : jobs) {
        if (Outputs.same(copy, original.file())) {
          throw Refusal.input(
              Fault.output(original.file(), "would be overwritten")
                  .remedy("name another folder", PackSetting.FOLDER));
        }
      }
    }
  }

  private List<PreparedPicture> all(List<Job> jobs, Staging parts, IntConsumer progress)
      throws Refusal, IOException {
    ExecutorService workers = Executors.newFixedThreadPool(workers());
    try {
      List<Future<PreparedPicture>> futures = new ArrayList<>();
      jobs.forEach(job -> futures.add(workers.submit(() -> one(job, parts))));
      List<PreparedPicture> done = new ArrayList<>();
      List<Fault> wrong = new ArrayList<>();
      for (Future<PreparedPicture> future : futures) {
        try {
          done.add(future.get());
          progress.accept(done.size());
        } catch (ExecutionException e) {
          wrong.addAll(faults(e));
        } catch (InterruptedException e) {
          Thread.currentThread().interrupt();
          throw new IOException("interrupted", e);
        }
      }
      if (!wrong.isEmpty()) {
        throw Refusal.input(wrong);
      }
      return done;
    } finally {
      workers.shutdownNow();
    }
  }

  /** As many as there are processors and room for large pictures. */
  private static int workers() {
    Runtime machine = Runtime.getRuntime();
    return (int) Math.max(1, Math.min(machine.availableProcessors(), machine.maxMemory() / ROOM));
  }

  private static List<Fault> faults(ExecutionException e) throws IOException {
    Throwable cause = e.getCause();
    if (cause instanceof PictureException picture) {
      return List.of(picture.fault());
    }
    if (cause instanceof Refusal refusal) {
      return refusal.faults();
    }
    if (cause instanceof IOException io) {
      throw io;
    }
    throw new IllegalStateException(cause);
  }

  /** A drawing has as many pixels as it is asked for; pictures never get more than they have. */
  private void checkPixels(Job job, ToPrint what) throws Refusal {
    double side = job.longest().in() * job.density();
    double longest = what.part().longestSide();
    double pixels = side * side * what.part().width() * what.part().height() / (longest * longest);
    if (pixels > mostPixels || side > Integer.MAX_VALUE) {
      throw Refusal.input(
          Fault.limit(
                  job.file(),
                  String.format(
                      Locale.ROOT,
                      "needs %.0f million pixels, over the limit of %.0f million",
                      pixels / 1e6,
                      mostPixels / 1e6))
              .remedy("give a shorter --at or a lower --density")
              .remedy("raise the limit", PackSetting.MAXIMUM_PIXELS));
    }
  }

  private PreparedPicture one(Job job, Staging parts)
      throws PictureException, Refusal, IOException {
    Picture picture = job.read();
    String digest = job.digest();
    if (digest != null && !digest.equals(picture.digest())) {
      throw Refusal.input(
          Fault.content(job.file(), "has changed since fit placed it").remedy("run fit again"));
    }
    ToPrint what = job.of(picture);
    if (picture instanceof Drawing) {
      checkPixels(job, what);
    }
    ReadyPicture ready = what.ready(job.density());
    PixelSize before = null;
    FineDetail fine;
    double resolved = 1;
    if (picture instanceof RasterPicture raster) {
      before = new PixelSize(raster.width(), raster.height());
      fine = FineLines.of(raster);
      resolved = ResolvedShare.of(raster);
    } else {
      fine = ((Drawing) picture).fineDetail();
    }
    Staging.Part part = parts.begin(job.output());
    boolean fewer;
    try (OutputStream file = new BufferedOutputStream(part.out())) {
      fewer = job.write(ready, file);
    }
    return new PreparedPicture(
        job,
        Files.size(job.file()),
        Files.size(part.path()),
        before,
        what.part().longestSide(),
        ready.size(),
        ready.density(),
        ready.cleared(),
        picture instanceof RasterPicture r && r.ground() == Ground.OPAQUE_OTHER,
        fewer,
        fine.printed(Length.pt(job.longest().pt() / what.part().longestSide())),
        resolved,
        notes(job, picture));
  }

  private static List<PictureNote> notes(Job job, Picture picture) {
    List<PictureNote> notes = new ArrayList<>(picture.notes());
    if (job.filled()) {
      notes.add(PictureNote.plain("is filled with colours in the pack; the copy is as drawn"));
    }
    return notes;
  }
}
