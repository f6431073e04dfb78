package dev.placket.packs.compose;

import dev.placket.packs.description.Described;
import dev.placket.packs.sample.SampleComment;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Numbered comments from round to round; slips are noted. */
final class CommentBook {
  private static final List<String> SPARE = List.of("sample", "size", "unit", "sent");
  private static final String OPEN = "open";
  private static final String CLOSED = "closed";

  private final Described described;
  private final int free;
  private final Map<Integer, SampleComment> all = new TreeMap<>();
  private final List<String> reworded = new ArrayList<>();

  CommentBook(Described described, List<SampleRow> rows) {
    this.described = described;
    this.free = 1 + rows.stream().mapToInt(CommentBook::number).max().orElse(0);
  }

  /** The number of a row; 0 for none. */
  static int number(SampleRow row) {
    return row.of("number").matches("[1-9][0-9]{0,5}") ? Integer.parseInt(row.of("number")) : 0;
  }

  /** The comments of the next sample: made, closed or carried over. */
  List<SampleComment> next(String sample, List<SampleRow> rows) {
    Set<Integer> said = new HashSet<>();
    for (SampleRow row : rows) {
      int number = number(row);
      if (number > 0) {
        SampleComment before = all.get(number);
        if (said.contains(number) && before != null) {
          again(row, before);
        } else if (before != null || !row.of("comment").isEmpty()) {
          all.put(number, comment(sample, number, row, before));
          note(sample, row, before);
          said.add(number);
        } else {
          row.fault(described, "comment", "no text for the new number " + number, "the comment");
        }
      } else {
        unnumbered(row);
      }
    }
    List<SampleComment> next = new ArrayList<>();
    all.forEach(
        (number, comment) -> {
          if (said.contains(number)) {
            next.add(comment);
          } else if (comment.open()) {
            next.add(with(comment, true));
          }
        });
    return next;
  }

  /** A number that was used for another comment would replace it. */
  private void note(String sample, SampleRow row, @Nullable SampleComment before) {
    String words = row.of("comment");
    if (before != null && !words.isEmpty() && !words.equals(before.text())) {
      reworded.add(
          "comment %d: %s has other words than before; was '%s'."
              .formatted(before.number(), sample, before.text()));
    }
  }

  /** Comments whose words changed from one round to another. */
  List<String> reworded() {
    return reworded;
  }

  private void unnumbered(SampleRow row) {
    if (!row.of("number").isEmpty()) {
      row.fault(described, "number", "'" + row.of("number") + "'", "a whole number from 1");
    } else if (row.hasAny(List.of("action", "state", "at"))
        || row.of("point").isEmpty() && !row.of("comment").isEmpty()) {
      row.fault(
          described,
          "number",
          "a comment without a number",
          "one, by which it is carried over, as " + free);
    } else if (!row.hasAny(List.of("point", "photograph")) && !saysNothing(row)) {
      row.fault(described, "point", "neither a point, a comment nor a photograph", "one of them");
    }
  }

  /** Whether only the sample and its size are filled in, as in the spare rows of a form. */
  private static boolean saysNothing(SampleRow row) {
    return row.fields().entrySet().stream()
        .allMatch(f -> f.getValue().isEmpty() || SPARE.contains(f.getKey()));
  }

  /** A further row of the same number and round: for another photograph. */
  private void again(SampleRow row, SampleComment before) {
    boolean same = row.of("comment").isEmpty() || row.of("comment").equals(before.text());
    boolean state = row.of("state").isEmpty() || isOpen(row) == before.open();
    if (!same
        || !state
        || !row.of("action").isEmpty() && !row.of("action").equals(before.action())) {
      row.fault(
          described,
          "number",
          "the number " + before.number() + " again in this sample, with other words",
          "a number of its own, as " + free);
    }
  }

  private SampleComment comment(
      String sample, int number, SampleRow row, @Nullable SampleComment before) {
    return new SampleComment(
        number,
        before == null ? sample : before.since(),
        or(row, "point", before == null ? "" : before.point()),
        or(row, "size", before == null ? "" : before.size()),
        or(row, "comment", before == null ? "" : before.text()),
        or(row, "action", before == null ? "" : before.action()),
        isOpen(row),
        false);
  }

  private static String or(SampleRow row, String column, String otherwise) {
    return row.of(column).isEmpty() ? otherwise : row.of(column);
  }

  private boolean isOpen(SampleRow row) {
    String state = row.of("state");
    if (!state.isEmpty() && !state.equals(OPEN) && !state.equals(CLOSED)) {
      row.unknown(described, "state", "the state", List.of(OPEN, CLOSED));
    }
    return !state.equals(CLOSED);
  }

  private static SampleComment with(SampleComment c, boolean carried) {
    return new SampleComment(
        c.number(), c.since(), c.point(), c.size(), c.text(), c.action(), c.open(), carried);
  }
}
