package dev.placket.workbooks.show;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.placket.packs.report.MoreJson;
import dev.placket.workbooks.geometry.CellRange;
import dev.placket.workbooks.place.Anchored;
import dev.placket.workbooks.place.Fitted;
import dev.placket.workbooks.read.Mark;
import java.io.IOException;
import java.util.Locale;

/**
 * The field {@code worksheet} of a sheet in {@code fit.json}.
 *
 * @param fitted the worksheet with its flats
 * @param tolerance the tolerance at its lines in pixels
 */
public record WorksheetJson(Fitted fitted, int tolerance) implements MoreJson {
  @Override
  public void write(JsonGenerator json) throws IOException {
    json.writeObjectFieldStart("worksheet");
    json.writeStringField("name", fitted.worksheet().name());
    json.writeStringField("page", fitted.room().page().cells().toString());
    json.writeNumberField("printedPercent", fitted.room().page().percent());
    json.writeNumberField("leewayPixels", tolerance);
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
    json.writeNumberField("bytes", picture.content().length);
    json.writeEndObject();
  }

  /** A reason in words. */
  static String word(Mark.Why why) {
    return why.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
