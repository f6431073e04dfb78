package dev.placket.packs.sample;

import java.util.List;

/**
 * The check of one sample.
 *
 * @param name by which its pack knows it
 * @param facts what is stated of it as a whole
 * @param sizes the sample in each of its sizes, in the order of the list; in a form, nothing is
 *     measured
 * @param comments those made or closed in its round, and those carried over, by their numbers
 */
public record SampleCheck(
    String name, CheckFacts facts, List<JudgedSample> sizes, List<SampleComment> comments) {
  /** Copies the lists. */
  public SampleCheck {
    sizes = List.copyOf(sizes);
    comments = List.copyOf(comments);
  }

  /** Whether nothing is measured yet. */
  public boolean isForm() {
    return sizes.stream().allMatch(s -> s.count(Verdict.NOT_MEASURED) == s.points().size());
  }
}
