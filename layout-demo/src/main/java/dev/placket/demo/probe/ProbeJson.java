package dev.placket.demo.probe;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import dev.placket.layout.density.EffectiveDensity;
import dev.placket.layout.density.PixelDensity;
import dev.placket.layout.density.PixelSize;
import dev.placket.layout.density.Rate;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.units.Length;
import dev.placket.packs.json.PlainCharacters;
import dev.placket.pictures.PictureProbe;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.base.PrintLimits;
import dev.placket.pictures.base.PrintedDetail;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What was probed, in the form {@code placket-probe/1} that the schema in the jar describes. */
final class ProbeJson {
  private static final int DIGITS = 9;
  private static final int DECIMALS = 6;

  private final JsonGenerator json;
  private final PrintLimits limits;

  private ProbeJson(JsonGenerator json, PrintLimits limits) {
    this.json = json;
    this.limits = limits;
  }

  static String of(List<Probed> files, PrintLimits limits) {
    StringWriter text = new StringWriter();
    DefaultPrettyPrinter lines =
        new DefaultPrettyPrinter().withArrayIndenter(new DefaultIndenter("  ", "\n"));
    lines.indentObjectsWith(new DefaultIndenter("  ", "\n"));
    try (JsonGenerator json = PlainCharacters.factory().createGenerator(text)) {
      json.setPrettyPrinter(lines);
      json.enable(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN);
      new ProbeJson(json, limits).all(files);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text + "\n";
  }

  private void all(List<Probed> files) throws IOException {
    json.writeStartObject();
    json.writeStringField("format", "placket-probe/1");
    json.writeArrayFieldStart("files");
    for (Probed p : files) {
      file(p);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void file(Probed file) throws IOException {
    PictureProbe p = file.probe();
    json.writeStartObject();
    json.writeStringField("file", p.name());
    json.writeStringField("format", p.format());
    pixels("pixels", p.pixels());
    number("pixelAspect", p.pixelAspect());
    density(p.density());
    json.writeStringField("ground", p.ground().words());
    box("inkedBox", file.box());
    box("insideFrame", p.insideFrame());
    Probed.Printed at = file.at();
    printed(at);
    pixels("wantedPixels", at == null ? null : at.wanted());
    json.writeArrayFieldStart("notes");
    for (PictureNote note : file.notes()) {
      json.writeString(note.text());
    }
    json.writeEndArray();
    json.writeArrayFieldStart("drawnDifferently");
    for (PictureNote note : file.notes()) {
      if (note.changesPicture()) {
        json.writeString(note.text());
      }
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void printed(Probed.@Nullable Printed at) throws IOException {
    if (at == null) {
      json.writeNullField("printed");
      return;
    }
    json.writeObjectFieldStart("printed");
    number("longerSideMm", at.longest().mm());
    perInch("density", at.density());
    json.writeStringField("state", at.state().name().toLowerCase(Locale.ROOT));
    Double share = at.detail().resolvedShare();
    if (share == null) {
      json.writeNullField("resolvedShare");
    } else {
      number("resolvedShare", share);
    }
    perInch("resolvedDensity", at.resolved());
    PrintedDetail fine = at.detail().printed();
    millimetres("lineMm", fine.line());
    millimetres("letteringMm", fine.lettering());
    millimetres("gapMm", fine.gap());
    json.writeArrayFieldStart("tooFine");
    for (PrintedDetail.Warning w : fine.under(limits)) {
      json.writeString(w.kind().name().toLowerCase(Locale.ROOT));
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void perInch(String field, @Nullable EffectiveDensity density) throws IOException {
    if (density == null) {
      json.writeNullField(field);
      return;
    }
    json.writeObjectFieldStart(field);
    number("x", density.x());
    number("y", density.y());
    json.writeEndObject();
  }

  private void millimetres(String field, @Nullable Length length) throws IOException {
    if (length == null) {
      json.writeNullField(field);
    } else {
      place(field, length.mm());
    }
  }

  /** Pixels per inch, and beside them the very numbers of the file. */
  private void density(@Nullable PixelDensity density) throws IOException {
    if (density == null) {
      json.writeNullField("density");
      return;
    }
    json.writeObjectFieldStart("density");
    number("x", density.x().perInch());
    number("y", density.y().perInch());
    json.writeObjectFieldStart("stated");
    json.writeStringField("x", fraction(density.x()));
    json.writeStringField("y", fraction(density.y()));
    json.writeStringField("per", density.x().unit().name().toLowerCase(Locale.ROOT));
    json.writeEndObject();
    json.writeEndObject();
  }

  private static String fraction(Rate rate) {
    return rate.denominator() == 1
        ? "" + rate.numerator()
        : rate.numerator() + "/" + rate.denominator();
  }

  private void pixels(String field, @Nullable PixelSize size) throws IOException {
    if (size == null) {
      json.writeNullField(field);
      return;
    }
    json.writeObjectFieldStart(field);
    json.writeNumberField("width", size.width());
    json.writeNumberField("height", size.height());
    json.writeEndObject();
  }

  private void box(String field, @Nullable InkedBox box) throws IOException {
    if (box == null) {
      json.writeNullField(field);
      return;
    }
    json.writeObjectFieldStart(field);
    place("left", box.left());
    place("top", box.top());
    place("right", box.right());
    place("bottom", box.bottom());
    json.writeEndObject();
  }

  private void number(String field, double value) throws IOException {
    write(field, BigDecimal.valueOf(value).round(new MathContext(DIGITS)));
  }

  private void place(String field, double value) throws IOException {
    write(field, BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN));
  }

  private void write(String field, BigDecimal value) throws IOException {
    BigDecimal plain = value.stripTrailingZeros();
    json.writeNumberField(field, plain.scale() < 0 ? plain.setScale(0) : plain);
  }
}
