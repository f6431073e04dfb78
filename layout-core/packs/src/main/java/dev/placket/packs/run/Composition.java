package dev.placket.packs.run;

import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.language.Phrases;
import dev.placket.packs.page.Page;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.report.PackFacts;
import dev.placket.packs.report.SheetResult;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;

/** A pack that has been read and composed, before its flats are placed. */
interface Composition {
  /** The file or folder that it was read from. */
  Path source();

  /** What a reader of the PDF shows as its name. */
  String title();

  /** The languages of the pack and its texts in them. */
  Phrases phrases();

  /** What its files are called, before the ending. */
  String fileName();

  /** What it states besides its sheets. */
  PackFacts facts();

  /** Every flat of every sheet. */
  List<FlatSet.Item> items();

  /** How many sheets it has, further ones of flats not counted. */
  int sheets();

  /**
   * Places the flats.
   *
   * @throws Refusal naming every sheet without room
   */
  Placed place() throws Refusal;

  /** A pack whose flats have been placed, before its further sheets are ruled. */
  interface Placed {
    /** How many sheets it has. */
    int sheets();

    /** The sheets with their flats. */
    FittedPack pack() throws Refusal;
  }

  /**
   * A pack with its flats on ruled sheets.
   *
   * @param sheets the sheets in order
   * @param read how files were read, in words
   * @param unnamed files whose names say no role
   * @param notes what else a reader of the report should know
   */
  record FittedPack(
      List<FittedSheet> sheets, List<String> read, List<String> unnamed, List<String> notes) {}

  /**
   * A ruled sheet with its flats.
   *
   * @param result the flats and their fit
   * @param page the ruled page
   * @param trueSize identifiers of flats that carry the bar to check the print by
   */
  record FittedSheet(SheetResult result, Page page, Set<String> trueSize) {}
}
