package dev.placket.benchmarks;

import dev.placket.benchmarks.order.FitPicture;
import dev.placket.benchmarks.order.GarmentSheets;
import dev.placket.benchmarks.order.Looks;
import dev.placket.benchmarks.pages.PageFile;
import dev.placket.benchmarks.pages.ReferencePage;
import dev.placket.layout.check.Referee;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Order;
import dev.placket.layout.fit.OrderStep;
import dev.placket.layout.solve.Fitter;
import dev.placket.layout.solve.look.Look;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What order and growth change: measures before and after, prices, times, and pictures. */
@Command(
    name = "order",
    description = "Prints the published measures of fits before and after order and growth.",
    mixinStandardHelpOptions = true)
final class OrderCommand implements Callable<Integer> {
  private static final int PICTURES = 12;
  private static final int TIMED = 10;
  private static final int RUNS = 15;
  private static final int FEW = 4;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--flats",
      paramLabel = "DIR",
      description = "Garments of a folder with a manifest.csv, not of invented sizes.")
  private @Nullable Path flats;

  @Option(
      names = "--pictures",
      paramLabel = "DIR",
      description = "Draws twelve sheets, before and after, as PNG.")
  private @Nullable Path pictures;

  private int wrong;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    List<FitRequest> garments = new ArrayList<>();
    if (flats != null) {
      garments.addAll(GarmentSheets.in(flats));
    }
    garments.addAll(GarmentSheets.invented(Math.max(2, 12 - garments.size())));
    out.println("Garments with four to ten details, default order and growth");
    measure(garments, out);
    out.println("Reference sheets, default order, one scale for all");
    measure(
        PageFile.read("pages").stream()
            .map(ReferencePage::request)
            .map(r -> r.withOrder(Order.DEFAULT))
            .toList(),
        out);
    time(out);
    timeMany(out);
    draw(garments);
    out.flush();
    return wrong == 0 ? 0 : 1;
  }

  private void measure(List<FitRequest> requests, PrintWriter out) {
    Looks looks = new Looks();
    for (FitRequest request : requests) {
      Fit before = fit(request.withOrder(Order.NONE).withGrowth(false));
      Fit after = fit(request);
      Look plain = Look.of(request, before);
      Look ordered = Look.of(request, after);
      looks.add(plain, ordered);
      StringBuilder steps = new StringBuilder();
      steps.append(String.format(Locale.ROOT, "\t%.3f\t%.3f", plain.order(), ordered.order()));
      for (OrderStep s : after.order()) {
        String price = String.format(Locale.ROOT, "%.1f %%", 100 * s.price());
        steps.append('\t').append(s.wish()).append(s.kept() ? " " : " not kept ").append(price);
      }
      out.println(request.sheet().name() + "\t" + request.flats().size() + steps);
    }
    out.println(looks.text());
  }

  private Fit fit(FitRequest request) {
    if (!(Fitter.fit(request) instanceof Fit fit)) {
      throw new IllegalStateException("no room on " + request.sheet().name());
    }
    List<?> breaches = Referee.check(request, fit);
    wrong += breaches.size();
    breaches.forEach(b -> spec.commandLine().getErr().println(request.sheet().name() + ": " + b));
    return fit;
  }

  /** Ten flats with the default order and growth, warm, one thread. */
  private void time(PrintWriter out) {
    List<FitRequest> ten =
        GarmentSheets.invented(70).stream().filter(r -> r.flats().size() == TIMED).toList();
    double[] times = new double[ten.size()];
    for (int run = 0; run < RUNS; run++) {
      for (int i = 0; i < times.length; i++) {
        long start = System.nanoTime();
        fit(ten.get(i));
        double its = (System.nanoTime() - start) / 1e6;
        times[i] = run == 0 ? its : Math.min(times[i], its);
      }
    }
    Arrays.sort(times);
    out.printf(
        Locale.ROOT,
        "ten flats, default order and growth, warm, one thread: median %.1f ms, worst %.1f ms%n",
        times[times.length / 2],
        times[times.length - 1]);
  }

  /** Many flats with the order of a folder's sheet, warm, one thread: the least of a few runs. */
  private void timeMany(PrintWriter out) {
    for (GarmentSheets.Kind kind : GarmentSheets.Kind.values()) {
      for (int count : new int[] {20, 60, 100}) {
        FitRequest request = GarmentSheets.many(kind, count);
        double least = Double.POSITIVE_INFINITY;
        for (int run = 0; run < FEW; run++) {
          long start = System.nanoTime();
          fit(request);
          least = Math.min(least, (System.nanoTime() - start) / 1e6);
        }
        String name = kind.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        out.printf(Locale.ROOT, "%d flats, %s: %.0f ms%n", count, name, least);
      }
    }
  }

  private void draw(List<FitRequest> garments) {
    if (pictures == null) {
      return;
    }
    try {
      Files.createDirectories(pictures);
      for (FitRequest request : garments.subList(0, Math.min(PICTURES, garments.size()))) {
        String name = request.sheet().name();
        Fit before = fit(request.withOrder(Order.NONE).withGrowth(false));
        BufferedImage plain = FitPicture.of(request, before, name + ": the largest scale alone");
        BufferedImage ordered =
            FitPicture.of(request, fit(request), name + ": with order and growth");
        BufferedImage both =
            new BufferedImage(plain.getWidth(), 2 * plain.getHeight(), plain.getType());
        both.getGraphics().drawImage(plain, 0, 0, null);
        both.getGraphics().drawImage(ordered, 0, plain.getHeight(), null);
        ImageIO.write(both, "png", pictures.resolve(name.replace(' ', '-') + ".png").toFile());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
