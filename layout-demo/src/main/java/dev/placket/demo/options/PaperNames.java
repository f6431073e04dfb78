package dev.placket.demo.options;

import dev.placket.layout.sheet.PaperSize;
import java.util.Iterator;

/** The names of papers, for help and completion. */
public final class PaperNames implements Iterable<String> {
  @Override
  public Iterator<String> iterator() {
    return PaperSize.NAMED.stream().map(PaperSize::name).iterator();
  }
}
