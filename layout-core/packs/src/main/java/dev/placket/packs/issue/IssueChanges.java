package dev.placket.packs.issue;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.placket.packs.history.LogEntry;
import dev.placket.packs.history.PackHistory;
import dev.placket.packs.json.PlainCharacters;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.revision.Marked;
import dev.placket.packs.revision.Revised;
import dev.placket.packs.revision.WhatChanged;
import dev.placket.pictures.fault.Fault;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/**
 * The changes from one issue to another.
 *
 * @param from names the earlier: its revision and date, as far as it states them
 * @param to names the later
 * @param changes all of them, in the order of their kinds
 */
public record IssueChanges(String from, String to, List<Change> changes) {
  private static final String FORMAT = "placket-fit/1";
  private static final long MOST_BYTES = 100_000_000;

  /** Copies the list. */
  public IssueChanges {
    changes = List.copyOf(changes);
  }

  /**
   * Compares two issues of one style.
   *
   * @param before a folder with one, or its {@code fit.json}
   * @param after another
   * @throws Refusal if one cannot be read, is damaged or of another format, or they are of
   *     different styles
   */
  public static IssueChanges between(Path before, Path after) throws Refusal {
    JsonTree old = read(before);
    JsonTree now = read(after);
    String style = old.get("pack").get("styleNumber").text();
    String other = now.get("pack").get("styleNumber").text();
    if (!style.equals(other)) {
      throw Refusal.input(
          Fault.content(after, "is of the style '" + other + "', the other of '" + style + "'")
              .remedy("compare issues of one style"));
    }
    List<Change> changes = new ArrayList<>(Changes.between(old, now));
    changes.addAll(files(inputs(before), inputs(after)));
    return new IssueChanges(named(old), named(now), changes);
  }

  /**
   * A revision that has not been issued yet.
   *
   * @param revised what is marked on its sheets
   * @param history its log, and the revision of each sheet
   */
  record Next(Revised revised, PackHistory history) {}

  /**
   * What a pack changes that has not been issued yet.
   *
   * @param before the folder of the issue before
   * @param after the {@code fit.json} of the pack
   * @param stated the log of the description
   * @throws Refusal if the issue before cannot be read
   */
  static Next next(Path before, byte[] after, List<LogEntry> stated) throws Refusal {
    try {
      JsonTree old = read(before, "restore it, or move the issue away");
      JsonTree now = JsonTree.read(after);
      List<Marked> marked = MarkedThings.between(old, now);
      List<Change> changes = Changes.between(old, now);
      String code = now.get("pack").get("revision").text();
      List<String> lines = changes.stream().map(IssueChanges::line).toList();
      WhatChanged changed =
          new WhatChanged(named(old), lines, before(before, old, changes, marked));
      return new Next(
          new Revised(code, marked, changed), LogRows.of(stated, old, now, changes, marked));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The previews of the sheets of an issue that differ in the next. */
  private static Map<String, byte[]> before(
      Path folder, JsonTree issue, List<Change> changes, List<Marked> marked) throws IOException {
    Set<String> sheets = new TreeSet<>();
    changes.forEach(c -> sheets.add(c.sheet()));
    marked.forEach(m -> sheets.add(m.sheet()));
    List<String> previews =
        issue.get("files").items().stream()
            .map(JsonTree::text)
            .filter(name -> name.endsWith(".png"))
            .toList();
    List<String> ids =
        issue.get("sheets").items().stream().map(sheet -> sheet.get("id").text()).toList();
    Map<String, byte[]> pictures = new LinkedHashMap<>();
    for (int i = 0; i < Math.min(ids.size(), previews.size()); i++) {
      Path file = folder.resolve(previews.get(i));
      boolean own = Objects.equals(file.getParent(), folder) && Files.isRegularFile(file);
      if (sheets.contains(ids.get(i)) && own && Files.size(file) <= MOST_BYTES) {
        pictures.put(ids.get(i), Files.readAllBytes(file));
      }
    }
    return pictures;
  }

  /** Files that differ; none where one of the two is no issue with a manifest. */
  private static List<Change> files(Map<String, String> before, Map<String, String> after) {
    List<Change> changes = new ArrayList<>();
    Set<String> names = new TreeSet<>(before.keySet());
    names.addAll(after.keySet());
    for (String name : before.isEmpty() || after.isEmpty() ? Set.<String>of() : names) {
      String was = start(before.getOrDefault(name, ""));
      String is = start(after.getOrDefault(name, ""));
      if (!was.equals(is)) {
        changes.add(new Change(Change.Kind.FILE, "", name, was, is));
      }
    }
    return changes;
  }

  private static String start(String digest) {
    return digest.substring(0, Math.min(8, digest.length()));
  }

  private static Map<String, String> inputs(Path issue) throws Refusal {
    return Files.isDirectory(issue)
        ? IssueFolder.manifest(issue).map(IssueManifest::inputs).orElse(Map.of())
        : Map.of();
  }

  private static String named(JsonTree issue) {
    String revision = issue.get("pack").get("revision").text();
    String date = issue.get("pack").get("date").text();
    return (revision + " " + date).strip();
  }

  private static JsonTree read(Path path) throws Refusal {
    return read(path, "give the folder of an issue, or the fit.json of a pack");
  }

  private static JsonTree read(Path path, String remedy) throws Refusal {
    Path file = Files.isDirectory(path) ? json(path, remedy) : path;
    try {
      if (Files.size(file) > MOST_BYTES) {
        throw new IOException("it has more than " + MOST_BYTES + " bytes");
      }
      JsonTree tree = JsonTree.read(Files.readAllBytes(file));
      String format = tree.get("format").text();
      if (!format.equals(FORMAT)) {
        throw new IOException("its format is '" + format + "', not " + FORMAT);
      }
      return tree;
    } catch (IOException e) {
      String why = String.valueOf(e.getMessage()).lines().findFirst().orElse("");
      throw Refusal.input(
          Fault.content(file, "is no fit.json that can be read (" + why + ")").remedy(remedy));
    }
  }

  private static Path json(Path folder, String remedy) throws Refusal {
    List<Path> found = new ArrayList<>();
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*fit.json")) {
      files.forEach(found::add);
    } catch (IOException e) {
      throw Refusal.input(Fault.unreadable(folder, "cannot be read (" + e.getMessage() + ")"));
    }
    if (found.size() != 1) {
      throw Refusal.input(
          Fault.content(folder, "has " + (found.isEmpty() ? "no" : "several") + " fit.json")
              .remedy(remedy));
    }
    return found.get(0);
  }

  /** As lines of text, to be mailed. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add("Changes from " + from + " to " + to + ":");
    for (Change change : changes) {
      lines.add("  " + line(change));
    }
    if (changes.isEmpty()) {
      lines.add("  none");
    }
    return lines;
  }

  private static String line(Change c) {
    String kind = c.kind().name().toLowerCase(Locale.ROOT);
    String where = c.sheet().isEmpty() ? "" : c.sheet() + ", ";
    String what = kind + " " + where + plain(c.what()) + ": ";
    if (c.added()) {
      return what + "new: " + plain(c.after());
    }
    return c.removed()
        ? what + "gone: " + plain(c.before())
        : what + plain(c.before()) + " -> " + plain(c.after());
  }

  private static String plain(String text) {
    String line = text.strip().replaceAll("\\s*\\n\\s*", " / ");
    return line.isEmpty() ? "(empty)" : line;
  }

  /** As JSON. */
  public byte[] json() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (JsonGenerator json = PlainCharacters.factory().createGenerator(bytes)) {
      json.useDefaultPrettyPrinter();
      json.writeStartObject();
      json.writeStringField("format", "placket-changes/1");
      json.writeStringField("from", from);
      json.writeStringField("to", to);
      json.writeArrayFieldStart("changes");
      for (Change change : changes) {
        json.writeStartObject();
        json.writeStringField("kind", change.kind().name().toLowerCase(Locale.ROOT));
        json.writeStringField("sheet", change.sheet());
        json.writeStringField("what", change.what());
        json.writeStringField("before", change.before());
        json.writeStringField("after", change.after());
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    bytes.write('\n');
    return bytes.toByteArray();
  }
}
