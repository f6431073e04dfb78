package dev.placket.demo.options;

import dev.placket.layout.sheet.Paper;
import java.util.Iterator;

/** The names of papers, for help and completion. */
public final class PaperNames implements Iterable<String> {
  @Override
  public Iterator<String> iterator() {
    return Paper.NAMED.stream().map(Paper::name).iterator();
  }
}
