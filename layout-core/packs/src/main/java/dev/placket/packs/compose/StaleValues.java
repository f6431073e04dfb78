package dev.placket.packs.compose;

import dev.placket.packs.description.Described;
import dev.placket.packs.measure.MeasureText;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;

/**
 * Finds rows that would be judged by a value that was not asked yet in their round: the list has a
 * revised value by now, and they do not state what stood before.
 */
final class StaleValues {
  private final Described described;
  private final MeasuredList list;
  private final List<String> order;
  private final List<SampleRow> rows;

  /**
   * Of these rows.
   *
   * @param order the names of the samples in the order of their rounds
   */
  StaleValues(Described described, MeasuredList list, List<String> order, List<SampleRow> rows) {
    this.described = described;
    this.list = list;
    this.order = order;
    this.rows = rows;
  }

  void check() {
    for (SampleRow revised : rows) {
      if (isInList(revised)) {
        rows.stream().filter(row -> isOlder(row, revised)).forEach(row -> note(row, revised));
      }
    }
  }

  /** Whether the list has the revised value of a row. */
  private boolean isInList(SampleRow row) {
    return list.table().points().stream()
        .filter(p -> p.point().code().equals(row.of("point")))
        .map(p -> p.values().get(size(row)))
        .filter(Objects::nonNull)
        .anyMatch(now -> now.compareTo(revised(row, now)) == 0);
  }

  private String size(SampleRow row) {
    return row.of("size").isEmpty() ? list.table().sample() : row.of("size");
  }

  /** The revised value; one that differs where there is none, or it is no length. */
  private BigDecimal revised(SampleRow row, BigDecimal now) {
    try {
      return row.of("revised").isEmpty()
          ? now.add(BigDecimal.ONE)
          : MeasureText.parse(row.of("revised"), list.unit());
    } catch (IllegalArgumentException e) {
      return now.add(BigDecimal.ONE);
    }
  }

  private boolean isOlder(SampleRow row, SampleRow revised) {
    return row.of("point").equals(revised.of("point"))
        && row.of("asked").isEmpty()
        && row.hasAny(List.of("factory", "ours"))
        && order.indexOf(row.of("sample")) <= order.indexOf(revised.of("sample"));
  }

  private void note(SampleRow row, SampleRow revised) {
    row.fault(
        described,
        "asked",
        "no value, though the list has the value that "
            + revised.of("sample")
            + " revised "
            + row.of("point")
            + " to",
        "the value that was asked in this round");
  }
}
