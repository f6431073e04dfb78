package dev.placket.packs.compose;

import dev.placket.layout.fit.LeadRule;
import dev.placket.layout.flat.Spacing;
import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.page.Page;
import dev.placket.packs.page.SheetTexts;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A sheet that is ruled and lettered, with the flats that go on it.
 *
 * @param id its identifier; a further sheet of the same tables has a number behind it
 * @param name what it is called
 * @param page the ruled page
 * @param items its flats, in order; often none
 * @param ratios the ratio of each flat that has one
 * @param trueSize identifiers of flats that carry the bar to check the print by
 * @param spacing gap and clearance
 * @param rules which rules let the front lead
 * @param further whether what finds no room goes on over sheets like this, which then come next
 * @param texts what stands in its cells and tables
 */
public record ComposedSheet(
    String id,
    String name,
    Page page,
    List<FlatSet.Item> items,
    Map<String, Double> ratios,
    Set<String> trueSize,
    Spacing spacing,
    Set<LeadRule> rules,
    boolean further,
    SheetTexts texts) {
  /** Copies the list. */
  public ComposedSheet {
    items = List.copyOf(items);
    trueSize = Set.copyOf(trueSize);
  }
}
