package dev.placket.demo.prepare;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import dev.placket.layout.units.Length;
import dev.placket.packs.folder.Missing;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.fault.Fault;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads from a {@code fit.json} at what size each picture is placed. */
final class FitSizes {
  /**
   * One picture on a sheet.
   *
   * @param source the name of its file
   * @param role what it shows
   * @param digest SHA-256 of its file
   * @param layers the layers of its file that were asked for
   * @param filled whether its areas are filled with colours of the pack
   * @param longest the printed length of the longer side of its ink
   */
  record Placed(
      String source,
      String role,
      @Nullable String digest,
      List<String> layers,
      boolean filled,
      Length longest) {}

  private static final int MOST = 10_000;

  /** In points; ten metres, as of any other printed length. */
  private static final double LONGEST = Length.mm(10_000).pt();

  /** A page of a PDF may have layers, which earlier files did not record. */
  private static final Pattern LAYERED = Pattern.compile("(?i)\\.pdf(#|$)");

  private FitSizes() {}

  static List<Placed> read(Path fit) throws Refusal {
    Missing.check(fit);
    List<Placed> placed = new ArrayList<>();
    try (InputStream in = Files.newInputStream(fit);
        JsonParser json = new JsonFactory().createParser(in)) {
      String format = null;
      while (json.nextToken() != null) {
        if (json.currentToken() == JsonToken.FIELD_NAME && json.currentName().equals("format")) {
          format = json.nextTextValue();
        } else if (json.currentToken() == JsonToken.START_ARRAY
            && "placements".equals(json.currentName())) {
          while (json.nextToken() == JsonToken.START_OBJECT) {
            placed.add(placement(fit, json));
            if (placed.size() > MOST) {
              throw Refusal.input(
                  Fault.limit(fit, "has more than " + MOST + " placements").remedy("name another"));
            }
          }
        }
      }
      if (format == null || !format.startsWith("placket-fit/")) {
        throw Refusal.input(
            Fault.content(fit, "is no fit.json of this program").remedy("name one with --for"));
      }
      if (placed.isEmpty()) {
        throw Refusal.input(
            Fault.content(fit, "places no picture, so there is nothing to prepare"));
      }
      return placed;
    } catch (IOException e) {
      throw Refusal.input(
          Fault.content(fit, "cannot be read as fit.json (" + reason(e) + ")")
              .remedy("make it again with fit"));
    }
  }

  private static Placed placement(Path fit, JsonParser json) throws IOException, Refusal {
    String source = "";
    String role = "";
    String digest = null;
    @Nullable List<String> layers = null;
    boolean filled = false;
    double longest = 0;
    while (json.nextToken() == JsonToken.FIELD_NAME) {
      String field = json.currentName();
      json.nextToken();
      switch (field) {
        case "source" -> source = text(json);
        case "role" -> role = text(json);
        case "digest" -> digest = text(json);
        case "layers" -> layers = texts(json);
        case "filled" -> filled = json.currentToken() == JsonToken.VALUE_TRUE;
        case "inkedBox" ->
            longest = json.currentToken() == JsonToken.START_OBJECT ? longest(json) : 0;
        default -> json.skipChildren();
      }
    }
    if (!isFileName(source) || !(longest > 0 && longest <= LONGEST)) {
      throw Refusal.input(
          Fault.content(
                  fit,
                  "a placement has no file name as its source, or no inkedBox of a printed size")
              .remedy("make the file again with fit"));
    }
    if (layers == null && LAYERED.matcher(source).find()) {
      throw Refusal.input(
          Fault.content(fit, "does not state which layers of " + source + " are shown")
              .remedy("make the file again with fit"));
    }
    List<String> shown = layers == null ? List.of() : layers;
    return new Placed(source, role, digest, shown, filled, Length.pt(longest));
  }

  /** Where the JSON is broken, without the lines of it that a parser quotes. */
  private static String reason(IOException e) {
    return e instanceof JsonProcessingException json && json.getLocation() != null
        ? "line "
            + json.getLocation().getLineNr()
            + ", column "
            + json.getLocation().getColumnNr()
            + ": "
            + json.getOriginalMessage()
        : String.valueOf(e.getMessage());
  }

  private static List<String> texts(JsonParser json) throws IOException {
    List<String> texts = new ArrayList<>();
    if (json.currentToken() != JsonToken.START_ARRAY) {
      json.skipChildren();
      return texts;
    }
    while (json.nextToken() != JsonToken.END_ARRAY) {
      texts.add(text(json));
    }
    return texts;
  }

  private static String text(JsonParser json) throws IOException {
    if (json.currentToken() == JsonToken.VALUE_STRING) {
      return json.getText();
    }
    json.skipChildren();
    return "";
  }

  private static boolean isFileName(String name) {
    try {
      Path file = Path.of(name);
      return !name.isBlank() && file.getNameCount() == 1 && !file.isAbsolute();
    } catch (InvalidPathException e) {
      return false;
    }
  }

  private static double longest(JsonParser json) throws IOException {
    double across = 0;
    double down = 0;
    while (json.nextToken() == JsonToken.FIELD_NAME) {
      String side = json.currentName();
      json.nextToken();
      switch (side) {
        case "left" -> across -= number(json);
        case "right" -> across += number(json);
        case "top" -> down -= number(json);
        case "bottom" -> down += number(json);
        default -> json.skipChildren();
      }
    }
    return Math.max(across, down);
  }

  private static double number(JsonParser json) throws IOException {
    if (json.currentToken().isNumeric()) {
      return json.getDoubleValue();
    }
    json.skipChildren();
    return Double.NaN;
  }
}
