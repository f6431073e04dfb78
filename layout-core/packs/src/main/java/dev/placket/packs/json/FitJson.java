package dev.placket.packs.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.OrderStep;
import dev.placket.layout.fit.SizeLevel;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.sheet.SheetWindow;
import dev.placket.layout.units.Rect;
import dev.placket.packs.history.LogEntry;
import dev.placket.packs.history.PackHistory;
import dev.placket.packs.measure.MeasureList;
import dev.placket.packs.placed.PackWeight;
import dev.placket.packs.placed.PlacedFlat;
import dev.placket.packs.report.Further;
import dev.placket.packs.report.NoRoom;
import dev.placket.packs.report.Numbers;
import dev.placket.packs.report.PackFacts;
import dev.placket.packs.report.SheetResult;
import dev.placket.pictures.base.PrintLimits;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Writes {@code fit.json}: what lies where, for other programs. Its form is {@code
 * placket-fit-1.schema.json}; lengths are points from the sheet's top left corner, y down.
 */
public final class FitJson {
  private final JsonGenerator json;
  private final PrintLimits limits;

  private FitJson(JsonGenerator json, PrintLimits limits) {
    this.json = json;
    this.limits = limits;
  }

  /**
   * The file's bytes.
   *
   * @param title the pack's title
   * @param facts what the pack states besides its sheets
   * @param targets when a picture is soft or heavy
   * @param limits under what printed sizes a thing counts as too fine
   * @param weight what the pack weighs; null where no weight is kept
   * @param sheets the sheets in order
   * @param files names of the files of the run; none where none are written
   */
  public static byte[] bytes(
      String title,
      PackFacts facts,
      DensityTargets targets,
      PrintLimits limits,
      @Nullable PackWeight weight,
      List<SheetResult> sheets,
      List<String> files)
      throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (JsonGenerator json = PlainCharacters.factory().createGenerator(bytes)) {
      DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
      json.setPrettyPrinter(
          new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter));
      json.enable(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN);
      new FitJson(json, limits).write(title, facts, targets, weight, sheets, files);
    }
    bytes.write('\n');
    return bytes.toByteArray();
  }

  private void history(PackHistory history) throws IOException {
    if (history.equals(PackHistory.NONE)) {
      return;
    }
    json.writeObjectFieldStart("history");
    json.writeArrayFieldStart("log");
    for (LogEntry entry : history.log()) {
      json.writeStartObject();
      json.writeStringField("revision", entry.revision());
      json.writeStringField("date", entry.date());
      json.writeStringField("by", entry.by());
      json.writeStringField("sheet", entry.sheet());
      json.writeStringField("what", entry.what());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeObjectFieldStart("sheets");
    for (Map.Entry<String, String> sheet : history.sheets().entrySet()) {
      json.writeStringField(sheet.getKey(), sheet.getValue());
    }
    json.writeEndObject();
    json.writeEndObject();
  }

  private void write(
      String title,
      PackFacts facts,
      DensityTargets targets,
      @Nullable PackWeight weight,
      List<SheetResult> sheets,
      List<String> files)
      throws IOException {
    json.writeStartObject();
    json.writeStringField("format", "placket-fit/1");
    json.writeObjectFieldStart("pack");
    json.writeStringField("title", title);
    for (Map.Entry<String, String> field : facts.fields().entrySet()) {
      json.writeStringField(camel(field.getKey()), field.getValue());
    }
    json.writeEndObject();
    history(facts.history());
    MeasureList measures = facts.measures();
    if (measures != null) {
      MeasuresJson.write(json, measures);
      if (!facts.samples().isEmpty()) {
        SamplesJson.write(json, measures, facts.samples());
      }
    }
    densityTargets(targets);
    if (!files.isEmpty()) {
      json.writeArrayFieldStart(EarlierFiles.FIELD);
      for (String file : files) {
        json.writeString(file);
      }
      json.writeEndArray();
    }
    WeightJson.write(json, weight);
    if (weight != null) {
      json.writeArrayFieldStart("conformsTo");
      if (sheets.stream()
          .flatMap(s -> s.flats().stream())
          .allMatch(f -> f.archiveFault() == null)) {
        json.writeString("PDF/A-2a");
        json.writeString("PDF/UA-1");
      }
      json.writeEndArray();
    }
    json.writeArrayFieldStart("sheets");
    for (SheetResult sheet : sheets) {
      sheet(sheet);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void sheet(SheetResult result) throws IOException {
    json.writeStartObject();
    if (result.id() != null) {
      json.writeStringField("id", result.id());
    }
    sheet(result.sheet(), result.spacing());
    json.writeArrayFieldStart("placements");
    for (PlacedFlat flat : result.flats()) {
      PlacementJson.write(json, flat, limits);
    }
    json.writeEndArray();
    Fit fit = result.fit();
    if (fit == null) {
      json.writeNullField("proof");
    } else {
      proof(fit);
    }
    FitRequest request = result.request();
    order(request == null ? 0 : request.order().share(), fit == null ? List.of() : fit.order());
    NoRoom noRoom = result.noRoom();
    if (noRoom == null) {
      json.writeNullField("conflict");
    } else {
      ConflictJson.write(json, noRoom.conflict(), noRoom.captions());
    }
    further(result.further());
    result.more().write(json);
    json.writeEndObject();
  }

  private void densityTargets(DensityTargets targets) throws IOException {
    json.writeObjectFieldStart("densityTargets");
    json.writeNumberField("soft", targets.soft());
    json.writeNumberField("aim", targets.aim());
    json.writeNumberField("heavy", targets.heavy());
    json.writeEndObject();
  }

  private void sheet(Sheet sheet, Spacing spacing) throws IOException {
    json.writeStringField("name", sheet.name());
    json.writeObjectFieldStart("paper");
    json.writeStringField("name", sheet.paper().name());
    Numbers.write(json, "width", sheet.paper().width().pt());
    Numbers.write(json, "height", sheet.paper().height().pt());
    json.writeEndObject();
    json.writeObjectFieldStart("margins");
    Numbers.write(json, "top", sheet.margins().top().pt());
    Numbers.write(json, "right", sheet.margins().right().pt());
    Numbers.write(json, "bottom", sheet.margins().bottom().pt());
    Numbers.write(json, "left", sheet.margins().left().pt());
    json.writeEndObject();
    Numbers.write(json, "gap", spacing.gap().pt());
    Numbers.write(json, "clearance", spacing.clearance().pt());
    json.writeArrayFieldStart("labelledCells");
    for (LabelledCell cell : sheet.labelledCells()) {
      namedBox(cell.name(), cell.box());
    }
    json.writeEndArray();
    json.writeArrayFieldStart("windows");
    for (SheetWindow window : sheet.windows()) {
      namedBox(window.name(), sheet.box(window));
    }
    json.writeEndArray();
  }

  private void proof(Fit fit) throws IOException {
    json.writeObjectFieldStart("proof");
    json.writeNumberField("scale", fit.proof().scale());
    json.writeNumberField("bound", Numbers.significant(fit.proof().bound(), RoundingMode.CEILING));
    json.writeNumberField("gap", Numbers.significant(fit.proof().gap(), RoundingMode.CEILING));
    json.writeBooleanField("proven", fit.proof().proven());
    json.writeNumberField("steps", fit.proof().steps());
    json.writeBooleanField("provenForOrder", fit.proof().provenForOrder());
    json.writeArrayFieldStart("levels");
    for (SizeLevel level : fit.levels()) {
      json.writeStartObject();
      json.writeStringField("kind", level.kind().name().toLowerCase(Locale.ROOT));
      json.writeNumberField("factor", Numbers.significant(level.factor(), RoundingMode.FLOOR));
      json.writeNumberField("bound", Numbers.significant(level.bound(), RoundingMode.CEILING));
      json.writeBooleanField("proven", level.proven());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void order(double share, List<OrderStep> steps) throws IOException {
    json.writeObjectFieldStart("order");
    json.writeNumberField("share", share);
    json.writeArrayFieldStart("steps");
    for (OrderStep step : steps) {
      json.writeStartObject();
      json.writeStringField("wish", step.wish().name().toLowerCase(Locale.ROOT).replace('_', ' '));
      json.writeBooleanField("kept", step.kept());
      json.writeNumberField("price", Numbers.significant(step.price(), RoundingMode.HALF_EVEN));
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void further(@Nullable Further further) throws IOException {
    if (further == null) {
      json.writeNullField("further");
      return;
    }
    json.writeObjectFieldStart("further");
    json.writeNumberField("sheet", further.number());
    json.writeNumberField("of", further.count());
    json.writeBooleanField("provenFewest", further.provenFewest());
    json.writeNumberField("scale", further.scale());
    json.writeNumberField("bound", Numbers.significant(further.bound(), RoundingMode.CEILING));
    json.writeEndObject();
  }

  private void namedBox(String name, Rect box) throws IOException {
    json.writeStartObject();
    json.writeStringField("name", name);
    Numbers.write(json, "left", box.left());
    Numbers.write(json, "top", box.top());
    Numbers.write(json, "right", box.right());
    Numbers.write(json, "bottom", box.bottom());
    json.writeEndObject();
  }

  private static String camel(String key) {
    StringBuilder name = new StringBuilder();
    for (String word : key.split("[-._]")) {
      name.append(
          name.isEmpty()
              ? word
              : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1));
    }
    return name.toString();
  }
}
