package dev.placket.demo.prepare;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import dev.placket.demo.Refusal;
import dev.placket.layout.units.Length;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads from a {@code fit.json} at what size each picture is placed. */
final class FitSizes {
  /**
   * One picture on a sheet.
   *
   * @param source the name of its file
   * @param role what it shows
   * @param digest SHA-256 of its file
   * @param longest the printed length of the longer side of its ink
   */
  record Placed(String source, String role, @Nullable String digest, Length longest) {}

  private FitSizes() {}

  static List<Placed> read(Path fit) throws Refusal {
    List<Placed> placed = new ArrayList<>();
    try (JsonParser json = new JsonFactory().createParser(Files.readAllBytes(fit))) {
      String format = null;
      while (json.nextToken() != null) {
        if (json.currentToken() == JsonToken.FIELD_NAME && json.currentName().equals("format")) {
          format = json.nextTextValue();
        } else if (json.currentToken() == JsonToken.START_ARRAY
            && "placements".equals(json.currentName())) {
          while (json.nextToken() == JsonToken.START_OBJECT) {
            placed.add(placement(fit, json));
          }
        }
      }
      if (format == null || !format.startsWith("placket-fit/")) {
        throw Refusal.input(fit + ": is no fit.json of this program; name one with --for.");
      }
      return placed;
    } catch (IOException e) {
      throw Refusal.input(
          fit + ": cannot be read as fit.json (" + e.getMessage() + "); make it anew with fit.");
    }
  }

  private static Placed placement(Path fit, JsonParser json) throws IOException, Refusal {
    String source = null;
    String role = "";
    String digest = null;
    double longest = 0;
    while (json.nextToken() == JsonToken.FIELD_NAME) {
      String field = json.currentName();
      json.nextToken();
      switch (field) {
        case "source" -> source = json.getText();
        case "role" -> role = json.getText();
        case "digest" -> digest = json.getText();
        case "inkedBox" -> longest = longest(json);
        default -> json.skipChildren();
      }
    }
    if (source == null || !(longest > 0)) {
      throw Refusal.input(
          fit + ": a placement without source or inkedBox; make the file anew with fit.");
    }
    return new Placed(source, role, digest, Length.pt(longest));
  }

  private static double longest(JsonParser json) throws IOException {
    double across = 0;
    double down = 0;
    while (json.nextToken() == JsonToken.FIELD_NAME) {
      String side = json.currentName();
      json.nextToken();
      switch (side) {
        case "left" -> across -= json.getDoubleValue();
        case "right" -> across += json.getDoubleValue();
        case "top" -> down -= json.getDoubleValue();
        case "bottom" -> down += json.getDoubleValue();
        default -> json.skipChildren();
      }
    }
    return Math.max(across, down);
  }
}
