package dev.placket.packs.revision;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What differs from the issue before, for the report.
 *
 * <p>The bytes are shared, not copied: they are only handed on.
 *
 * @param since the revision and the date of the issue before
 * @param lines the changes, one a line
 * @param before the changed sheets as they were: a PNG by the sheet's identifier
 */
public record WhatChanged(String since, List<String> lines, Map<String, byte[]> before) {
  /** Copies the collections. */
  public WhatChanged {
    lines = List.copyOf(lines);
    before = Collections.unmodifiableMap(new LinkedHashMap<>(before));
  }
}
