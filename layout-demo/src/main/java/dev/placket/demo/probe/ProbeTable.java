package dev.placket.demo.probe;

import dev.placket.layout.density.EffectiveDensity;
import dev.placket.layout.density.PixelDensity;
import dev.placket.layout.density.PixelSize;
import dev.placket.layout.density.PrintState;
import dev.placket.layout.flat.InkedBox;
import dev.placket.packs.report.FineWords;
import dev.placket.packs.report.FlatRow;
import dev.placket.pictures.PictureProbe;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.base.PrintLimits;
import dev.placket.pictures.fault.Visible;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What was probed, for a reader: at most 80 signs a line, no meaning by colour. */
final class ProbeTable {
  private static final int WIDTH = 80;
  private static final String INDENT = "    ";

  private final PrintLimits limits;
  private final StringBuilder text = new StringBuilder();

  private ProbeTable(PrintLimits limits) {
    this.limits = limits;
  }

  static String of(List<Probed> files, PrintLimits limits) {
    ProbeTable table = new ProbeTable(limits);
    table.line(columns("File", "format", "pixels", "px/in stated", "background"));
    files.forEach(table::file);
    return table.text.toString();
  }

  private static String columns(
      String file, String format, String size, String rate, String ground) {
    return String.format(Locale.ROOT, "%-27s %-6s %-15s %-15s %s", file, format, size, rate, ground)
        .stripTrailing();
  }

  private void file(Probed file) {
    PictureProbe p = file.probe();
    PixelSize size = p.pixels();
    String name = String.valueOf(Path.of(p.name()).getFileName());
    line(
        columns(
            cut(name, 27),
            p.format(),
            size == null ? "-" : pixels(size),
            size == null ? "-" : cut(rate(p.density()), 15),
            p.ground().words()));
    InkedBox box = file.box();
    if (box != null) {
      wrapped("drawing bounds " + box(box, size == null));
    }
    Probed.Printed at = file.at();
    if (at != null) {
      wrapped(printed(at));
      FineWords.all(at.detail().printed()).ifPresent(this::wrapped);
      FineWords.of(at.detail().printed(), limits).forEach(this::wrapped);
      FineWords.enlarged(at.density(), at.detail().resolvedShare()).ifPresent(this::wrapped);
    }
    file.notes().stream()
        .filter(PictureNote::changesPicture)
        .forEach(note -> wrapped(FlatRow.CHANGED + note.text()));
    file.notes().stream()
        .filter(note -> !note.changesPicture())
        .forEach(note -> wrapped(note.text()));
  }

  private static String printed(Probed.Printed at) {
    EffectiveDensity d = at.density();
    String asked = "; wanted pixels " + pixels(at.wanted());
    String side = "at " + trimmed(at.longest().mm()) + " mm: ";
    return d == null
        ? side + state(at.state()) + asked + ", if exported as pixels"
        : side + trimmed(d.least()) + " px/in, " + state(at.state()) + asked;
  }

  private static String state(PrintState state) {
    return switch (state) {
      case SOFT -> "S soft";
      case CRISP -> "C crisp";
      case HEAVY -> "H heavy";
      case SCALABLE -> "Sc scalable";
    };
  }

  private static String rate(@Nullable PixelDensity d) {
    if (d == null) {
      return "unknown";
    }
    String x = rate(d.x().perInch());
    String y = rate(d.y().perInch());
    return x.equals(y) ? x : x + " × " + y;
  }

  private static String rate(double perInch) {
    return String.format(Locale.ROOT, "%.4f", perInch).replaceAll("\\.?0+$", "");
  }

  private static String box(InkedBox b, boolean units) {
    String unit = units ? " units" : " px";
    return trimmed(b.left())
        + ", "
        + trimmed(b.top())
        + " to "
        + trimmed(b.right())
        + ", "
        + trimmed(b.bottom())
        + " ("
        + trimmed(b.width())
        + " × "
        + trimmed(b.height())
        + unit
        + ")";
  }

  private static String trimmed(double value) {
    String text = String.format(Locale.ROOT, "%,.1f", value);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }

  private static String pixels(PixelSize size) {
    return String.format(Locale.ROOT, "%,d × %,d", size.width(), size.height());
  }

  private static String cut(String name, int width) {
    return name.length() <= width ? name : name.substring(0, width - 1) + "…";
  }

  private void wrapped(String words) {
    StringBuilder line = new StringBuilder(INDENT);
    for (String word : words.split(" ")) {
      if (line.length() > INDENT.length() && line.length() + 1 + word.length() > WIDTH) {
        line(line.toString());
        line = new StringBuilder(INDENT).append("  ").append(word);
      } else {
        line.append(line.length() > INDENT.length() ? " " : "").append(word);
      }
    }
    line(line.toString());
  }

  private void line(String words) {
    text.append(Visible.line(words)).append(System.lineSeparator());
  }
}
