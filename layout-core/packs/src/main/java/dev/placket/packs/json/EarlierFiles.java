package dev.placket.packs.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The files of an earlier run, as its {@code fit.json} lists them. */
public final class EarlierFiles {
  static final String FIELD = "files";

  private static final String NAME = "fit.json";
  private static final long MOST_BYTES = 100_000_000;

  private EarlierFiles() {}

  /**
   * Names of files in a folder that an earlier run wrote there and a new one does not write again.
   *
   * <p>A file counts only as long as it is no newer than the {@code fit.json} that lists it, which
   * a run writes last: what somebody put there since is theirs.
   *
   * @param folder where both runs write
   * @param names what the new run writes
   */
  public static List<String> stale(Path folder, List<String> names) {
    Path json = folder.resolve(NAME);
    try {
      if (!Files.isRegularFile(json, LinkOption.NOFOLLOW_LINKS) || Files.size(json) > MOST_BYTES) {
        return List.of();
      }
      FileTime end = Files.getLastModifiedTime(json);
      Set<String> written = Set.copyOf(names);
      List<String> stale = new ArrayList<>();
      for (String name : listed(json)) {
        if (isPlain(name) && !written.contains(name) && isOlder(folder.resolve(name), end)) {
          stale.add(name);
        }
      }
      return stale;
    } catch (IOException e) {
      // A file that cannot be read lists nothing.
      return List.of();
    }
  }

  private static boolean isOlder(Path file, FileTime end) throws IOException {
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
        && Files.getLastModifiedTime(file).compareTo(end) <= 0;
  }

  /** A name in the folder itself. */
  private static boolean isPlain(String name) {
    return !name.isBlank()
        && name.chars().noneMatch(c -> c == '/' || c == '\\' || c == ':' || c < ' ')
        && !name.startsWith(".");
  }

  private static List<String> listed(Path json) throws IOException {
    List<String> names = new ArrayList<>();
    boolean ours = false;
    try (JsonParser parser = PlainCharacters.factory().createParser(Files.readAllBytes(json))) {
      if (parser.nextToken() != JsonToken.START_OBJECT) {
        return List.of();
      }
      while (parser.nextToken() == JsonToken.FIELD_NAME) {
        String field = parser.currentName();
        JsonToken value = parser.nextToken();
        if (field.equals("format")) {
          ours = parser.getText().equals("placket-fit/1");
        } else if (field.equals(FIELD) && value == JsonToken.START_ARRAY) {
          while (parser.nextToken() == JsonToken.VALUE_STRING) {
            names.add(parser.getText());
          }
        } else {
          parser.skipChildren();
        }
      }
    }
    return ours ? names : List.of();
  }
}
