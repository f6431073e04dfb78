package dev.placket.packs.revision;

import java.util.List;

/**
 * A revision and what it changed.
 *
 * @param code what stands in the triangles, as in {@code D}
 * @param things what is marked; none where nothing is to be
 * @param changed what the report shows of the issue before
 */
public record Revised(String code, List<Marked> things, WhatChanged changed) {
  /** Copies the list. */
  public Revised {
    things = List.copyOf(things);
  }

  /** Without marks. */
  public Revised unmarked() {
    return new Revised(code, List.of(), changed);
  }
}
