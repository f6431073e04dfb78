package dev.placket.demo;

import dev.placket.layout.fit.Conflict;
import dev.placket.layout.fit.FitRequest;
import java.util.List;
import java.util.Map;

/** Says in words of the trade why nothing fits, and what would help. */
public final class ConflictText {
  private ConflictText() {}

  /** Lines for the reader, the first says that there is no room; flats are called by their ids. */
  public static List<String> lines(FitRequest request, Conflict conflict) {
    return lines(request, conflict, Map.of());
  }

  /**
   * The same lines.
   *
   * @param captions what to call the flat of an id; ids not named keep their own
   */
  public static List<String> lines(
      FitRequest request, Conflict conflict, Map<String, String> captions) {
    String paragraph =
        dev.placket.layout.fit.ConflictText.of(conflict, id -> captions.getOrDefault(id, id));
    return List.of("no room on " + request.sheet().paper().name() + ". " + paragraph);
  }
}
