package dev.placket.benchmarks;

import dev.placket.benchmarks.order.FitPicture;
import dev.placket.benchmarks.order.GarmentSheets;
import dev.placket.benchmarks.order.LineByHand;
import dev.placket.layout.check.Referee;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Order;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Targets;
import dev.placket.layout.plan.Planner;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Pages with a line between views and details, beside lines ruled by hand every 5 mm. */
@Command(
    name = "lines",
    description = "Compares the line between views and details with lines ruled by hand.",
    mixinStandardHelpOptions = true)
final class LinesCommand implements Callable<Integer> {
  /** A page may be beaten by this share, or by its stated gap. */
  private static final double BEATEN = 0.005;

  private static final int ACROSS = 3;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--flats",
      paramLabel = "DIR",
      description = "Garments of a folder with a manifest.csv, then garments of invented sizes.")
  private @Nullable Path flats;

  @Option(
      names = "--pages",
      paramLabel = "N",
      defaultValue = "30",
      description = "Number of pages (default: ${DEFAULT-VALUE}).")
  private int pages;

  @Option(
      names = "--picture",
      paramLabel = "FILE",
      description = "Draws all pages, by hand above and fitted below, as one PNG.")
  private @Nullable Path picture;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    List<FitRequest> requests = new ArrayList<>();
    if (flats != null) {
      requests.addAll(GarmentSheets.in(flats));
    }
    requests.addAll(GarmentSheets.invented(Math.max(0, pages - requests.size())));
    out.println(
        "page\tflats\tlargest by hand\tlargest\tbound\tfront by hand\tfront\tleast detail by hand"
            + "\tleast detail\tnot kept");
    List<Double> fronts = new ArrayList<>();
    List<Double> details = new ArrayList<>();
    List<BufferedImage> drawn = new ArrayList<>();
    int wrong = 0;
    for (FitRequest open : requests.subList(0, Math.min(pages, requests.size()))) {
      FitRequest request = open.withOrder(Order.PARTED);
      Fit fit = (Fit) Planner.plan(request);
      LineByHand hand = LineByHand.best(request);
      if (hand == null) {
        throw new IllegalStateException("no line leaves room on " + request.sheet().name());
      }
      Fit free = (Fit) Planner.plan(request.withOrder(Order.NONE).withGrowth(false));
      double byHand = LineByHand.largest(request);
      double largest = free.proof().scale().doubleValue();
      boolean beaten = byHand > largest * (1 + Math.max(BEATEN, free.proof().gap()));
      wrong += beaten || !Referee.check(request, fit).isEmpty() ? 1 : 0;
      double[] its = sizes(request, fit);
      double[] theirs = sizes(hand.request(), hand.fit());
      fronts.add(its[0] / theirs[0]);
      details.add(its[1] / theirs[1]);
      StringBuilder lost = new StringBuilder();
      fit.order().stream()
          .filter(s -> !s.kept())
          .forEach(s -> lost.append(s.wish().name().toLowerCase(Locale.ROOT)).append(' '));
      out.printf(
          Locale.ROOT,
          "%s\t%d\t%.4f\t%.4f\t%.4f\t%.1f\t%.1f\t%.1f\t%.1f\t%s%s%n",
          request.sheet().name(),
          request.flats().size(),
          byHand,
          largest,
          free.proof().bound(),
          theirs[0],
          its[0],
          theirs[1],
          its[1],
          lost.toString().strip(),
          beaten ? " BEATEN" : "");
      if (picture != null) {
        drawn.add(FitPicture.of(hand.request(), hand.fit(), request.sheet().name() + ": by hand"));
        drawn.add(FitPicture.of(request, fit, request.sheet().name() + ": fitted"));
      }
    }
    out.println("front, fitted over by hand: " + Runs.ratios(fronts));
    out.println("least detail, fitted over by hand: " + Runs.ratios(details));
    draw(drawn);
    out.flush();
    return wrong == 0 ? 0 : 1;
  }

  /** The longest side of the front and of the smallest other flat by its target, in mm. */
  private static double[] sizes(FitRequest request, Fit fit) {
    double[] targets = Targets.scales(request.flats());
    double front = 0;
    double least = Double.POSITIVE_INFINITY;
    double detail = 0;
    for (int i = 0; i < targets.length; i++) {
      Flat f = request.flats().get(i);
      double scale = fit.placements().get(i).scale().doubleValue();
      double side = scale * f.ink().longestSide() * 25.4 / 72;
      if (i == 0) {
        front = side;
      } else if (!f.role().isView() && scale / targets[i] < least) {
        least = scale / targets[i];
        detail = side;
      }
    }
    return new double[] {front, detail};
  }

  private void draw(List<BufferedImage> drawn) {
    if (picture == null || drawn.isEmpty()) {
      return;
    }
    int width = drawn.get(0).getWidth();
    int height = drawn.get(0).getHeight();
    int rows = (drawn.size() / 2 + ACROSS - 1) / ACROSS;
    BufferedImage all =
        new BufferedImage(ACROSS * width, 2 * rows * height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = all.createGraphics();
    for (int i = 0; i < drawn.size(); i++) {
      int page = i / 2;
      g.drawImage(
          drawn.get(i), page % ACROSS * width, (2 * (page / ACROSS) + i % 2) * height, null);
    }
    g.dispose();
    try {
      ImageIO.write(all, "png", picture.toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
