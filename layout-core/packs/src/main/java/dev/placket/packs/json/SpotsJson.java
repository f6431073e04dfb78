package dev.placket.packs.json;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.placket.layout.units.PlanePoint;
import dev.placket.layout.units.Rect;
import dev.placket.packs.callouts.LaidText;
import dev.placket.packs.dimensions.LaidDimension;
import dev.placket.packs.flats.FlatSpots;
import dev.placket.packs.placed.PlacedFlat;
import dev.placket.packs.report.Numbers;
import java.io.IOException;
import java.util.List;

/**
 * The spots of a placed flat as fields of {@code fit.json}: where on the sheet they come to lie.
 */
final class SpotsJson {
  /** To a millionth of a point, as all boxes are. */
  private static final int DECIMALS = 6;

  private SpotsJson() {}

  static void write(JsonGenerator json, PlacedFlat placed) throws IOException {
    FlatSpots spots = placed.item().spots();
    json.writeArrayFieldStart("points");
    for (String id : spots.points()) {
      json.writeStartObject();
      json.writeStringField("point", id);
      place(json, placed, id);
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("dimensions");
    for (LaidDimension dimension : placed.dimensions()) {
      json.writeStartObject();
      json.writeStringField("point", dimension.code());
      line(json, "line", dimension.line());
      box(json, "code", dimension.box());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("callouts");
    for (FlatSpots.Callout callout : spots.callouts()) {
      for (int i = 0; i < callout.points().size(); i++) {
        json.writeStartObject();
        json.writeStringField("callout", callout.id());
        json.writeStringField("point", callout.points().get(i));
        json.writeStringField("text", callout.text());
        place(json, placed, callout.points().get(i));
        for (LaidText laid : placed.callouts()) {
          if (laid.id().equals(callout.id())) {
            drawn(json, laid, i);
          }
        }
        json.writeEndObject();
      }
    }
    json.writeEndArray();
  }

  private static void drawn(JsonGenerator json, LaidText laid, int leader) throws IOException {
    if (!laid.regions().isEmpty()) {
      double across = laid.regions().get(leader).width();
      json.writeNumberField("ring", Numbers.rounded(across / 2, DECIMALS));
    }
    line(json, "leader", laid.leaders().get(leader));
    box(json, "label", laid.box());
  }

  private static void line(JsonGenerator json, String name, List<PlanePoint> points)
      throws IOException {
    json.writeArrayFieldStart(name);
    for (PlanePoint p : points) {
      json.writeStartObject();
      json.writeNumberField("x", Numbers.rounded(p.x(), DECIMALS));
      json.writeNumberField("y", Numbers.rounded(p.y(), DECIMALS));
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void box(JsonGenerator json, String name, Rect box) throws IOException {
    json.writeObjectFieldStart(name);
    json.writeNumberField("left", Numbers.rounded(box.left(), DECIMALS));
    json.writeNumberField("top", Numbers.rounded(box.top(), DECIMALS));
    json.writeNumberField("right", Numbers.rounded(box.right(), DECIMALS));
    json.writeNumberField("bottom", Numbers.rounded(box.bottom(), DECIMALS));
    json.writeEndObject();
  }

  private static void place(JsonGenerator json, PlacedFlat placed, String id) throws IOException {
    PlanePoint at = placed.spot(id);
    json.writeNumberField("x", Numbers.rounded(at.x(), DECIMALS));
    json.writeNumberField("y", Numbers.rounded(at.y(), DECIMALS));
  }
}
