package dev.placket.packs.json;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.placket.packs.page.SheetTexts;
import dev.placket.packs.report.MoreJson;
import java.io.IOException;
import java.util.List;
import java.util.Map;

/** The texts of a described sheet as fields of {@code fit.json}. */
public final class TextsJson {
  private TextsJson() {}

  /** Cells and tables. */
  public static MoreJson of(SheetTexts texts) {
    return json -> write(json, texts);
  }

  private static void write(JsonGenerator json, SheetTexts texts) throws IOException {
    json.writeArrayFieldStart("cells");
    for (Map.Entry<String, SheetTexts.CellText> cell : texts.cells().entrySet()) {
      json.writeStartObject();
      json.writeStringField("cell", cell.getKey());
      json.writeStringField("caption", cell.getValue().caption());
      json.writeStringField("text", cell.getValue().text());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("tables");
    for (Map.Entry<String, SheetTexts.Table> table : texts.tables().entrySet()) {
      json.writeStartObject();
      json.writeStringField("table", table.getKey());
      list(json, "headings", table.getValue().headings());
      json.writeArrayFieldStart("rows");
      for (List<String> row : table.getValue().rows()) {
        json.writeStartArray();
        for (String value : row) {
          json.writeString(value);
        }
        json.writeEndArray();
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void list(JsonGenerator json, String name, List<String> values)
      throws IOException {
    json.writeArrayFieldStart(name);
    for (String value : values) {
      json.writeString(value);
    }
    json.writeEndArray();
  }
}
