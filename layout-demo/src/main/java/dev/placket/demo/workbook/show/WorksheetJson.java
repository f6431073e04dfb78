package dev.placket.demo.workbook.show;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.placket.demo.result.FitJson;
import dev.placket.demo.workbook.geometry.CellRange;
import dev.placket.demo.workbook.place.Anchored;
import dev.placket.demo.workbook.place.Fitted;
import dev.placket.demo.workbook.read.Mark;
import java.io.IOException;
import java.util.Locale;

/** The field {@code worksheet} of a sheet in {@code fit.json}. */
public record WorksheetJson(Fitted fitted, int leeway) implements FitJson.More {
  @Override
  public void write(JsonGenerator json) throws IOException {
    json.writeObjectFieldStart("worksheet");
    json.writeStringField("name", fitted.worksheet().name());
    json.writeStringField("page", fitted.room().page().cells().toString());
    json.writeNumberField("printedPercent", fitted.room().page().percent());
    json.writeNumberField("leewayPixels", leeway);
    json.writeArrayFieldStart("blankWindows");
    for (CellRange range : fitted.room().blank()) {
      json.writeString(range.toString());
    }
    json.writeEndArray();
    json.writeArrayFieldStart("keptClear");
    for (Mark mark : fitted.room().marks()) {
      json.writeStartObject();
      json.writeStringField("range", mark.range().toString());
      json.writeStringField("why", word(mark.why()));
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("anchors");
    for (Anchored picture : fitted.pictures()) {
      anchor(json, picture);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void anchor(JsonGenerator json, Anchored picture) throws IOException {
    json.writeStartObject();
    json.writeStringField("flat", picture.flat().flat().id());
    json.writeStringField("name", picture.name());
    json.writeStringField(
        "cell", CellRange.cell(picture.at().column(), picture.at().row()).toString());
    json.writeNumberField("across", picture.at().across());
    json.writeNumberField("down", picture.at().down());
    json.writeNumberField("width", picture.width());
    json.writeNumberField("height", picture.height());
    json.writeNumberField("bytes", picture.png().length);
    json.writeEndObject();
  }

  /** A reason in words. */
  static String word(Mark.Why why) {
    return why.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
