package dev.placket.packs.run;

import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import dev.placket.packs.page.PdfPack;
import dev.placket.packs.page.RevisionMark;
import dev.placket.packs.placed.PackWeight;
import dev.placket.packs.text.Lettering;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Splits a pack that is over the size limit into files that are not, at whole sheets and on the
 * fewest files that keep the order of the sheets. Each page has the name of its file above its
 * header.
 */
final class PackParts {
  /** What the name of its file adds to a page, at most. */
  private static final long NAME_BYTES = 400;

  private static final double ABOVE_FRAME = Length.mm(1.5).pt();

  private final String title;
  private final List<String> languages;
  private final Lettering lettering;
  private final long limit;

  PackParts(String title, List<String> languages, Lettering lettering, long limit) {
    this.title = title;
    this.languages = languages;
    this.lettering = lettering;
    this.limit = limit;
  }

  /**
   * The parts.
   *
   * @param files their bytes by their names
   * @param parts what is reported of them
   */
  record Split(Map<String, byte[]> files, List<PackWeight.Part> parts) {
    /** No part: the pack is one file. */
    static final Split NONE = new Split(Map.of(), List.of());
  }

  /**
   * Splits the pages.
   *
   * @param stem what the names of the files begin with
   */
  Split of(List<PdfPack.Filled> pages, String stem) throws IOException {
    List<Integer> ends = new ArrayList<>();
    for (int from = 0; from < pages.size(); from = ends.get(ends.size() - 1)) {
      ends.add(end(pages, from));
    }
    if (ends.size() < 2) {
      return Split.NONE;
    }
    Map<String, byte[]> files = new LinkedHashMap<>();
    List<PackWeight.Part> parts = new ArrayList<>();
    int from = 0;
    for (int i = 0; i < ends.size(); i++) {
      String which = (i + 1) + " of " + ends.size();
      String name = stem + "-" + which.replace(' ', '-');
      List<PdfPack.Filled> own = new ArrayList<>();
      for (PdfPack.Filled page : pages.subList(from, ends.get(i))) {
        own.add(named(page, name));
      }
      byte[] bytes = new PdfPack(title + " (" + which + ")", languages).pdf(own);
      files.put(name + ".pdf", bytes);
      parts.add(new PackWeight.Part(name + ".pdf", bytes.length, from + 1, ends.get(i)));
      from = ends.get(i);
    }
    return new Split(files, parts);
  }

  /** The last page of a file that begins with one: one page at least, however large. */
  private int end(List<PdfPack.Filled> pages, int from) throws IOException {
    int fits = from + 1;
    int over = pages.size() + 1;
    // Bytes grow with the pages, so the longest part is found by halving.
    while (over - fits > 1) {
      int middle = (fits + over) / 2;
      List<PdfPack.Filled> some = pages.subList(from, middle);
      long bytes = new PdfPack(title, languages).pdf(some).length + NAME_BYTES * some.size();
      if (bytes <= limit) {
        fits = middle;
      } else {
        over = middle;
      }
    }
    return fits;
  }

  private PdfPack.Filled named(PdfPack.Filled page, String name) {
    Rect inside = page.page().sheet().inside();
    double base = inside.top() - ABOVE_FRAME;
    double left = inside.right() - lettering.width(name, Lettering.CAPTION);
    List<RevisionMark> marks = new ArrayList<>(page.marks());
    marks.add(
        new RevisionMark(
            List.of(), lettering.line(name, left, base, Lettering.CAPTION, false), List.of()));
    return new PdfPack.Filled(page.page(), page.flats(), marks);
  }
}
