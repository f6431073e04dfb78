package dev.placket.layout.fit;

import java.util.List;

/**
 * Why nothing fits: the demands that conflict, and the changes that would cure it.
 *
 * @param requirements the demands in conflict, in the user's order of preference
 * @param reliefs the cures known, the smallest first
 * @param proven whether it is known that nothing fits; else the search only found nothing
 * @param provenMinimal whether it is known that leaving out any one demand would make it fit
 * @param steps the steps that the search took
 */
public record Conflict(
    List<Requirement> requirements,
    List<Relief> reliefs,
    boolean proven,
    boolean provenMinimal,
    long steps)
    implements Outcome {
  /** Copies the lists. */
  public Conflict {
    requirements = List.copyOf(requirements);
    reliefs = List.copyOf(reliefs);
  }

  /** The same conflict with the ways out of one kind alone. */
  public Conflict only(Relief.Kind kind) {
    List<Relief> some = reliefs.stream().filter(r -> r.kind() == kind).toList();
    return new Conflict(requirements, some, proven, provenMinimal, steps);
  }
}
