package dev.placket.packs.issue;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import dev.placket.packs.json.PlainCharacters;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;

/**
 * What an issue was made from, and what is in it.
 *
 * @param style the style number
 * @param revision its revision
 * @param date as the description states it
 * @param paper the paper that was asked for instead of the described one; empty for that
 * @param made the program and its version
 * @param inputs SHA-256 of every file that was read, by its path beside the description
 * @param outputs SHA-256 of every file of the issue, by its name
 */
public record IssueManifest(
    String style,
    String revision,
    String date,
    String paper,
    String made,
    Map<String, String> inputs,
    Map<String, String> outputs) {
  /** What the first field of a manifest states. */
  public static final String FORMAT = "placket-issue/1";

  /** Sorts the files by their names. */
  public IssueManifest {
    inputs = Map.copyOf(inputs);
    outputs = Map.copyOf(outputs);
  }

  /** As JSON. */
  public byte[] bytes() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (JsonGenerator json = PlainCharacters.factory().createGenerator(bytes)) {
      json.useDefaultPrettyPrinter();
      json.writeStartObject();
      json.writeStringField("format", FORMAT);
      json.writeStringField("style", style);
      json.writeStringField("revision", revision);
      json.writeStringField("date", date);
      json.writeStringField("paper", paper);
      json.writeStringField("made", made);
      files(json, "inputs", inputs);
      files(json, "outputs", outputs);
      json.writeEndObject();
    }
    bytes.write('\n');
    return bytes.toByteArray();
  }

  private static void files(JsonGenerator json, String name, Map<String, String> files)
      throws IOException {
    json.writeObjectFieldStart(name);
    for (Map.Entry<String, String> file : new TreeMap<>(files).entrySet()) {
      json.writeStringField(file.getKey(), file.getValue());
    }
    json.writeEndObject();
  }

  /**
   * Reads a manifest.
   *
   * @throws IOException if it is damaged, or of another format, with what was found
   */
  public static IssueManifest read(byte[] bytes) throws IOException {
    Map<String, String> texts = new LinkedHashMap<>();
    Map<String, Map<String, String>> files = new LinkedHashMap<>();
    try (JsonParser json = PlainCharacters.factory().createParser(bytes)) {
      expect(json.nextToken() == JsonToken.START_OBJECT);
      while (json.nextToken() == JsonToken.FIELD_NAME) {
        String field = json.currentName();
        if (json.nextToken() == JsonToken.START_OBJECT) {
          Map<String, String> its = files.computeIfAbsent(field, f -> new LinkedHashMap<>());
          while (json.nextToken() == JsonToken.FIELD_NAME) {
            String name = json.currentName();
            expect(json.nextToken() == JsonToken.VALUE_STRING);
            its.put(name, json.getText());
          }
        } else if (json.currentToken() == JsonToken.VALUE_STRING) {
          texts.put(field, json.getText());
        } else {
          json.skipChildren();
        }
      }
    }
    String format = texts.getOrDefault("format", "");
    if (!format.equals(FORMAT)) {
      throw new IOException("its format is '" + format + "', not " + FORMAT);
    }
    for (String field : new String[] {"style", "revision", "date"}) {
      expect(texts.containsKey(field));
    }
    expect(files.containsKey("inputs") && files.containsKey("outputs"));
    return new IssueManifest(
        texts.getOrDefault("style", ""),
        texts.getOrDefault("revision", ""),
        texts.getOrDefault("date", ""),
        texts.getOrDefault("paper", ""),
        texts.getOrDefault("made", ""),
        files.getOrDefault("inputs", Map.of()),
        files.getOrDefault("outputs", Map.of()));
  }

  private static void expect(boolean so) throws IOException {
    if (!so) {
      throw new IOException("a field is missing or of another kind");
    }
  }
}
