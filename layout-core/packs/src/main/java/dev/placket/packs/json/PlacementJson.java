package dev.placket.packs.json;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.placket.layout.density.EffectiveDensity;
import dev.placket.layout.density.PixelSize;
import dev.placket.layout.density.PrintState;
import dev.placket.layout.fit.ExactBox;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Held;
import dev.placket.layout.flat.ScaleGroup;
import dev.placket.layout.units.Length;
import dev.placket.packs.flats.LineWeight;
import dev.placket.packs.placed.PlacedFlat;
import dev.placket.packs.placed.RasterPrint;
import dev.placket.packs.report.Numbers;
import dev.placket.packs.text.LanguageMarks;
import dev.placket.pictures.Picture;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.base.PrintLimits;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Writes what {@code fit.json} says of one placed flat. */
final class PlacementJson {
  private static final int DENSITY_DECIMALS = 3;

  private final JsonGenerator json;
  private final PrintLimits limits;

  private PlacementJson(JsonGenerator json, PrintLimits limits) {
    this.json = json;
    this.limits = limits;
  }

  static void write(JsonGenerator json, PlacedFlat placed, PrintLimits limits) throws IOException {
    new PlacementJson(json, limits).write(placed);
  }

  private void write(PlacedFlat placed) throws IOException {
    Flat flat = placed.flat();
    json.writeStartObject();
    json.writeStringField("flat", flat.id());
    json.writeStringField("role", flat.role().name().toLowerCase(Locale.ROOT));
    json.writeStringField("caption", placed.item().file().caption());
    json.writeStringField("source", placed.item().file().name());
    json.writeStringField("digest", placed.item().file().digest());
    json.writeArrayFieldStart("layers");
    for (String layer : placed.item().file().layers()) {
      json.writeString(layer);
    }
    json.writeEndArray();
    json.writeBooleanField("filled", placed.item().file().filled());
    json.writeStringField("drawn", placed.item().file().picture().digest());
    LineWeight weight = placed.item().weight();
    Numbers.writeOptional(json, "lineWeight", weight == null ? null : weight.printed().pt());
    json.writeArrayFieldStart("lines");
    for (String line : placed.item().caption().lines()) {
      json.writeString(LanguageMarks.without(line));
    }
    json.writeEndArray();
    ScaleGroup group = flat.group();
    json.writeStringField("scaleGroup", group == null ? null : group.name());
    Numbers.writeOptional(json, "ratio", group == null ? null : group.ratio());
    box("inkedBox", placed.ink());
    box("footprint", placed.footprint());
    json.writeNumberField("scale", placed.placement().scale());
    Numbers.writeOptional(json, "garmentScale", placed.garmentScale());
    Numbers.write(json, "target", placed.target().pt());
    Numbers.write(json, "growth", placed.growth());
    Numbers.write(json, "least", flat.limits().least().pt());
    Length greatest = flat.limits().greatest();
    Numbers.writeOptional(json, "greatest", greatest == null ? null : greatest.pt());
    held(flat.held());
    json.writeBooleanField("capped", placed.placement().capped());
    raster(placed);
    RasterPrint print = placed.raster();
    Numbers.writeOptional(
        json,
        "resolvedShare",
        print == null ? null : Numbers.rounded(print.resolvedShare(), 3).doubleValue());
    PrintedJson.write(json, placed.printed(), limits);
    SpotsJson.write(json, placed);
    Picture picture = placed.item().file().picture();
    texts("notes", picture.notes());
    texts("drawnDifferently", picture.changes());
    json.writeEndObject();
  }

  private void texts(String field, List<PictureNote> notes) throws IOException {
    json.writeArrayFieldStart(field);
    for (PictureNote note : notes) {
      json.writeString(note.text());
    }
    json.writeEndArray();
  }

  private void held(Held held) throws IOException {
    if (!held.any()) {
      json.writeNullField("held");
      return;
    }
    json.writeObjectFieldStart("held");
    Length left = held.left();
    Length top = held.top();
    Numbers.writeOptional(json, "left", left == null ? null : left.pt());
    Numbers.writeOptional(json, "top", top == null ? null : top.pt());
    Numbers.writeOptional(json, "scale", held.scale());
    json.writeEndObject();
  }

  private void raster(PlacedFlat placed) throws IOException {
    RasterPrint print = placed.raster();
    if (print == null) {
      json.writeNullField("pixels");
      density(placed.density());
      json.writeStringField("state", word(placed.state()));
      json.writeNullField("wantedPixels");
      json.writeNullField("embedded");
      return;
    }
    pixels("pixels", print.pixels());
    density(print.density());
    json.writeStringField("state", word(print.state()));
    pixels("wantedPixels", print.wanted());
    pixels("embedded", new PixelSize(print.image().getWidth(), print.image().getHeight()));
  }

  private void density(@Nullable EffectiveDensity density) throws IOException {
    if (density == null) {
      json.writeNullField("density");
      return;
    }
    json.writeObjectFieldStart("density");
    json.writeNumberField("x", Numbers.rounded(density.x(), DENSITY_DECIMALS));
    json.writeNumberField("y", Numbers.rounded(density.y(), DENSITY_DECIMALS));
    json.writeEndObject();
  }

  private void box(String field, ExactBox box) throws IOException {
    json.writeObjectFieldStart(field);
    json.writeNumberField("left", Numbers.rounded(box.left()));
    json.writeNumberField("top", Numbers.rounded(box.top()));
    json.writeNumberField("right", Numbers.rounded(box.right()));
    json.writeNumberField("bottom", Numbers.rounded(box.bottom()));
    json.writeEndObject();
  }

  private void pixels(String field, PixelSize size) throws IOException {
    json.writeObjectFieldStart(field);
    json.writeNumberField("width", size.width());
    json.writeNumberField("height", size.height());
    json.writeEndObject();
  }

  private static String word(PrintState state) {
    return state.name().toLowerCase(Locale.ROOT);
  }
}
