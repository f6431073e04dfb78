package dev.placket.benchmarks.pages;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Reads reference sheets: a JSON array of objects with {@code id, width, height, margin, gap,
 * labelled, flats} and, where known, {@code bestKnown, bound, proven}.
 */
public final class PageFile {
  private static final ObjectMapper JSON =
      new ObjectMapper().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

  private PageFile() {}

  /**
   * The sheets of a file, or of a built-in set where no such file exists and the name is {@code
   * pages} or {@code pages-hard}.
   *
   * @throws PageException if the file cannot be read or holds something else
   */
  public static List<ReferencePage> read(String file) {
    Path path = Path.of(file);
    if (!Files.exists(path) && Set.of("pages", "pages-hard").contains(file)) {
      return builtIn(file);
    }
    if (!Files.isRegularFile(path)) {
      throw new PageException(file + ": no such file; name one, or 'pages' or 'pages-hard'");
    }
    try {
      return parse(file, Files.readAllBytes(path));
    } catch (IOException e) {
      throw new PageException(file + ": cannot be read (" + e.getMessage() + ")");
    }
  }

  /** The sheets of a set that comes with the benchmarks: {@code pages} or {@code pages-hard}. */
  public static List<ReferencePage> builtIn(String name) {
    String resource = "/dev/placket/benchmarks/" + name + ".json";
    try (InputStream in = PageFile.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new PageException(name + ": not among the built-in sheets, pages and pages-hard");
      }
      return parse(name, in.readAllBytes());
    } catch (IOException e) {
      throw new PageException(name + ": cannot be read (" + e.getMessage() + ")");
    }
  }

  static List<ReferencePage> parse(String file, byte[] content) {
    JsonNode root = tree(file, content);
    if (!root.isArray() || root.isEmpty()) {
      throw new PageException(file + ": holds no sheets; write a JSON array of one or more");
    }
    List<ReferencePage> pages = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    for (JsonNode each : root) {
      ReferencePage page = new PageReader(file, pages.size() + 1, each).read();
      if (!ids.add(page.id())) {
        throw new PageException(
            file + ": two sheets have the id '" + page.id() + "'; rename one of them");
      }
      pages.add(page);
    }
    return List.copyOf(pages);
  }

  private static JsonNode tree(String file, byte[] content) {
    try {
      return JSON.readTree(content);
    } catch (JsonProcessingException e) {
      throw new PageException(
          file
              + ": no JSON at line "
              + e.getLocation().getLineNr()
              + ", column "
              + e.getLocation().getColumnNr()
              + " ("
              + e.getOriginalMessage()
              + ")");
    } catch (IOException e) {
      throw new PageException(file + ": cannot be read (" + e.getMessage() + ")");
    }
  }
}
