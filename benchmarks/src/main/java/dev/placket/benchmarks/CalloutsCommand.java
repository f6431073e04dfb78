package dev.placket.benchmarks;

import dev.placket.benchmarks.pages.PageException;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Front and back of garments with callouts: what of the scale their room costs. */
@Command(
    name = "callouts",
    description = {
      "Fits front and back of each garment of a folder on A4 with 4, 8 and 15 callouts a view,",
      "and without. Ends with 1 if a sheet has no room for its callouts."
    },
    mixinStandardHelpOptions = true)
final class CalloutsCommand implements Callable<Integer> {
  private static final int[] COUNTS = {4, 8, 15};
  private static final Pattern SCALE = Pattern.compile("\"proof\" : \\{\\s*\"scale\" : ([0-9.]+)");
  private static final Pattern LEADER = Pattern.compile("\"leader\" : \\[(.*?)\\]", Pattern.DOTALL);
  private static final int PICTURE = 640;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "DIR", description = "The folder: NAME-front.svg with NAME-back.svg.")
  private Path folder = Path.of(".");

  @Mixin private Placket placket = new Placket();

  @Option(
      names = "--picture",
      paramLabel = "FILE",
      description = "Draws all sheets with callouts as one PNG.")
  private @Nullable Path picture;

  @Override
  public Integer call() throws IOException {
    placket.need();
    Runs.need(folder, "name the folder of the drawings");
    PrintWriter out = spec.commandLine().getOut();
    Provenance.lines(0).forEach(l -> out.println("# " + l));
    out.println("garment\tcallouts a view\tscale without\tscale\tkept\tbent leaders");
    Path work = Files.createTempDirectory("callouts");
    List<BufferedImage> sheets = new ArrayList<>();
    boolean all = true;
    for (int count : COUNTS) {
      List<Double> kept = new ArrayList<>();
      for (String garment : garments()) {
        double without = scale(fit(work, garment, count, "none"));
        String json = fit(work, garment, count, "auto");
        double scale = scale(json);
        all &= scale > 0;
        kept.add(scale / without);
        out.printf(
            Locale.ROOT,
            "%s\t%d\t%.3f\t%.3f\t%.2f\t%d%n",
            garment,
            count,
            without,
            scale,
            scale / without,
            bent(json));
        if (scale > 0) {
          sheets.add(ImageIO.read(work.resolve("out/pack.png").toFile()));
        }
      }
      out.println("# " + count + " a view, share of the scale kept: " + Runs.ratios(kept));
    }
    Runs.delete(work);
    draw(sheets);
    out.flush();
    return all ? 0 : 1;
  }

  private List<String> garments() {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(f -> f.getFileName().toString())
          .filter(f -> f.endsWith("-front.svg"))
          .map(f -> f.substring(0, f.length() - "-front.svg".length()))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new PageException(folder + ": cannot be listed (" + e.getMessage() + ")");
    }
  }

  /** What fit.json states; nothing where there is no room. */
  private String fit(Path work, String garment, int count, String leaders) throws IOException {
    for (String view : List.of("front", "back")) {
      String file = garment + "-" + view + ".svg";
      Files.copy(folder.resolve(file), work.resolve(file), StandardCopyOption.REPLACE_EXISTING);
    }
    Path pack = work.resolve("pack.yaml");
    Files.writeString(pack, description(garment, count, leaders));
    Path out = work.resolve("out");
    List<String> call = List.of("fit", pack.toString(), "--out", out.toString(), "--overwrite");
    Runs.Ended ended = placket.run(work.resolve("printed"), call);
    if (ended.code() < 0 || ended.code() == 1 || ended.code() == 2) {
      throw new PageException(garment + ": " + Files.readString(work.resolve("printed")).strip());
    }
    return Runs.placed(ended.code()) ? Files.readString(out.resolve("fit.json")) : "";
  }

  private String description(String garment, int count, String leaders) {
    StringBuilder text = new StringBuilder("format: placket-pack/1\npaper: A4\nsheets:\n  flat:\n");
    text.append("    name: " + garment + "\n    areas: [views]\n    windows: {views: }\n");
    text.append("    leaders: " + leaders + "\n    flats:\n");
    Random random = new Random(garment.hashCode() + count);
    for (String view : List.of("front", "back")) {
      String file = garment + "-" + view + ".svg";
      text.append("      " + view + ":\n        file: '" + file + "'\n        role: " + view);
      text.append("\n        points:\n");
      StringBuilder callouts = new StringBuilder("        callouts:\n");
      for (int i = 0; i < count; i++) {
        int across = 20 + random.nextInt(60);
        double down = 100.0 * (i + 0.2 + 0.6 * random.nextDouble()) / count;
        String id = view.charAt(0) + "" + i;
        text.append(
            String.format(
                Locale.ROOT, "          p%s: {across: %d%%, down: %.1f%%}%n", id, across, down));
        String words = i % 3 == 0 ? "Topstitched, 6 apart" : "Seam " + (i + 1);
        callouts.append(
            String.format(Locale.ROOT, "          %s: {point: p%s, text: '%s'}%n", id, id, words));
      }
      text.append(callouts);
    }
    return text.toString();
  }

  private static double scale(String json) {
    Matcher found = SCALE.matcher(json);
    return found.find() ? Double.parseDouble(found.group(1)) : 0;
  }

  /** Leaders of three points. */
  private static long bent(String json) {
    return LEADER
        .matcher(json)
        .results()
        .filter(r -> r.group(1).chars().filter(c -> c == 'x').count() > 2)
        .count();
  }

  private void draw(List<BufferedImage> sheets) throws IOException {
    if (picture == null || sheets.isEmpty()) {
      return;
    }
    int across = sheets.size() / COUNTS.length;
    int height = PICTURE * sheets.get(0).getHeight() / sheets.get(0).getWidth();
    BufferedImage all =
        new BufferedImage(
            Math.max(1, across) * PICTURE, COUNTS.length * height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = all.createGraphics();
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    for (int i = 0; i < sheets.size(); i++) {
      g.drawImage(
          sheets.get(i),
          i % Math.max(1, across) * PICTURE,
          i / Math.max(1, across) * height,
          PICTURE,
          height,
          null);
    }
    g.dispose();
    ImageIO.write(all, "png", picture.toFile());
  }
}
