package dev.placket.workbooks.read;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.placket.workbooks.geometry.CellRange;
import dev.placket.workbooks.geometry.Tracks;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Sizes in any order, and merged cells asked for in any order, against looking at each one. */
class SizesTest {
  private static final int COUNT = 12;
  private static final long OTHER = 50;

  record Stated(int first, int end, long size) {}

  @Property(tries = 1000)
  void eachTrackHasTheLeastSizeStatedForIt(@ForAll("stated") List<Stated> stated) {
    List<String> notes = new ArrayList<>();
    Sizes sizes = new Sizes("columns", notes);
    stated.forEach(s -> sizes.add(s.first, s.end, s.size));
    Tracks tracks = sizes.tracks(OTHER, COUNT);
    boolean rising = true;
    for (int i = 1; i < stated.size(); i++) {
      rising &= stated.get(i - 1).end <= stated.get(i).first;
    }
    for (int i = 0; i < COUNT; i++) {
      int track = i;
      long least =
          stated.stream()
              .filter(s -> s.first <= track && track < s.end)
              .mapToLong(Stated::size)
              .min()
              .orElse(OTHER);
      assertEquals(least, tracks.size(i), "track " + i);
    }
    assertEquals(rising, notes.isEmpty());
  }

  @Provide
  Arbitrary<List<Stated>> stated() {
    Arbitrary<Integer> first = Arbitraries.integers().between(0, COUNT - 1);
    Arbitrary<Integer> length = Arbitraries.integers().between(1, 5);
    Arbitrary<Long> size = Arbitraries.longs().between(0, 100);
    return Combinators.combine(first, length, size)
        .as((f, l, s) -> new Stated(f, Math.min(COUNT, f + l), s))
        .list()
        .ofMaxSize(8);
  }

  @Property(tries = 500)
  void aCellIsFoundInTheMergeThatHoldsIt(
      @ForAll("merges") List<CellRange> merges, @ForAll("cells") List<CellRange> cells) {
    List<CellRange> apart = new ArrayList<>();
    merges.stream().filter(m -> apart.stream().noneMatch(m::meets)).forEach(apart::add);
    Merges found = new Merges(apart);
    for (CellRange cell : cells) {
      CellRange around = apart.stream().filter(m -> m.contains(cell)).findFirst().orElse(cell);
      assertEquals(around, found.around(cell.left(), cell.top()));
      Integer after =
          apart.stream()
              .filter(m -> m.top() <= cell.top() && cell.top() < m.bottom())
              .map(CellRange::left)
              .filter(left -> left > cell.left())
              .min(Integer::compare)
              .orElse(null);
      assertEquals(after, found.after(cell.left(), cell.top()));
    }
  }

  @Provide
  Arbitrary<List<CellRange>> merges() {
    Arbitrary<Integer> at = Arbitraries.integers().between(0, 9);
    Arbitrary<Integer> length = Arbitraries.integers().between(1, 4);
    return Combinators.combine(at, at, length, length)
        .as((x, y, w, h) -> new CellRange(x, y, x + w, y + h))
        .list()
        .ofMaxSize(8);
  }

  @Provide
  Arbitrary<List<CellRange>> cells() {
    Arbitrary<Integer> at = Arbitraries.integers().between(0, 12);
    return Combinators.combine(at, at).as(CellRange::cell).list().ofMinSize(1).ofMaxSize(20);
  }
}
