package dev.placket.packs.description;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.DocumentStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.events.SequenceStartEvent;
import org.yaml.snakeyaml.reader.ReaderException;

/**
 * Reads YAML into nodes: text stays as it is typed, every node keeps its place. Aliases and tags
 * are refused, so that nothing grows in memory beyond what is written.
 */
final class YamlTree {
  private static final int DEPTH = 40;
  private static final Pattern TAIL = Pattern.compile("\\s+");

  private final Faults faults;
  private final Iterator<Event> events;

  private YamlTree(Faults faults, Iterator<Event> events) {
    this.faults = faults;
    this.events = events;
  }

  /** The one document of a text; null where it is broken, with the slip noted. */
  static @Nullable PackNode read(String text, Faults faults) {
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(Integer.MAX_VALUE);
    options.setNestingDepthLimit(DEPTH);
    try {
      Yaml yaml = new Yaml(options);
      YamlTree tree = new YamlTree(faults, yaml.parse(new java.io.StringReader(text)).iterator());
      return tree.document();
    } catch (MarkedYAMLException e) {
      faults.add(mark(e.getProblemMark()), "broken YAML (" + problem(e) + ")", "YAML 1.1");
    } catch (ReaderException e) {
      String sign = String.format(java.util.Locale.ROOT, "U+%04X", e.getCodePoint());
      faults.add(at(text, e.getPosition()), "the sign " + sign, "signs that can be printed");
    } catch (TooDeep e) {
      faults.add(e.place, "values nested more than " + DEPTH + " deep", "fewer levels");
    } catch (YAMLException e) {
      String message = String.valueOf(e.getMessage());
      faults.add(TextPosition.START, "broken YAML (" + oneLine(message) + ")", "YAML 1.1");
    }
    return null;
  }

  private @Nullable PackNode document() {
    events.next();
    Event start = events.next();
    if (!(start instanceof DocumentStartEvent)) {
      faults.add(TextPosition.START, "an empty file", "a description that begins with format");
      return null;
    }
    PackNode node = node(events.next(), 0);
    events.next();
    Event end = events.next();
    if (end instanceof DocumentStartEvent) {
      faults.add(mark(end.getStartMark()), "a second document", "one document in the file");
    }
    return node;
  }

  private PackNode node(Event event, int depth) {
    TextPosition place = mark(event.getStartMark());
    if (depth > DEPTH) {
      throw new TooDeep(place);
    }
    if (event instanceof MappingStartEvent start) {
      checkTag(place, start.getTag());
      return keys(place, depth);
    }
    if (event instanceof SequenceStartEvent start) {
      checkTag(place, start.getTag());
      return items(place, depth);
    }
    if (event instanceof AliasEvent alias) {
      faults.add(place, "the alias '*" + alias.getAnchor() + "'", "the value itself, written out");
      return new PackNode.Text(place, "");
    }
    ScalarEvent scalar = (ScalarEvent) event;
    checkTag(place, scalar.getTag());
    return new PackNode.Text(place, scalar.getValue());
  }

  private PackNode items(TextPosition place, int depth) {
    List<PackNode> items = new ArrayList<>();
    for (Event e = events.next(); !e.is(Event.ID.SequenceEnd); e = events.next()) {
      items.add(node(e, depth + 1));
    }
    return new PackNode.Items(place, items);
  }

  private PackNode keys(TextPosition place, int depth) {
    Map<String, PackNode> values = new LinkedHashMap<>();
    Map<String, TextPosition> places = new LinkedHashMap<>();
    for (Event e = events.next(); !e.is(Event.ID.MappingEnd); e = events.next()) {
      PackNode key = node(e, depth + 1);
      PackNode value = node(events.next(), depth + 1);
      if (!(key instanceof PackNode.Text text)) {
        faults.add(key.mark(), key.what() + " as a key", "a word");
        continue;
      }
      TextPosition before = places.putIfAbsent(text.value(), text.mark());
      if (before != null) {
        faults.add(
            text.mark(),
            "'" + text.value() + "' again",
            "each key once (it is also in line " + before.line() + ")");
        continue;
      }
      values.put(text.value(), value);
    }
    return new PackNode.Keys(place, values, places);
  }

  private void checkTag(TextPosition place, @Nullable String tag) {
    if (tag != null) {
      faults.add(place, "the tag '" + tag + "'", "a value without a tag");
    }
  }

  private static TextPosition mark(org.yaml.snakeyaml.error.@Nullable Mark mark) {
    return mark == null
        ? TextPosition.START
        : new TextPosition(mark.getLine() + 1, mark.getColumn() + 1);
  }

  private static TextPosition at(String text, int position) {
    int end =
        Math.min(
            text.length(),
            text.offsetByCodePoints(0, Math.min(position, text.codePointCount(0, text.length()))));
    String before = text.substring(0, end);
    int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
    String last = before.substring(before.lastIndexOf('\n') + 1);
    return new TextPosition(line, 1 + last.codePointCount(0, last.length()));
  }

  private static String problem(MarkedYAMLException e) {
    return oneLine(String.valueOf(e.getProblem()));
  }

  private static String oneLine(String text) {
    Matcher m = TAIL.matcher(text.strip());
    String line = m.replaceAll(" ");
    return line.length() <= 100 ? line : line.substring(0, 99) + "…";
  }

  private static final class TooDeep extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final transient TextPosition place;

    TooDeep(TextPosition place) {
      super("too deep", null, false, false);
      this.place = place;
    }
  }
}
