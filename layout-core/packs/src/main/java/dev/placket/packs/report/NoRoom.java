package dev.placket.packs.report;

import dev.placket.layout.fit.Conflict;
import java.util.Map;

/**
 * Why a sheet has no room for its flats.
 *
 * @param conflict the demands that conflict, and what would help
 * @param captions the captions of flats by their ids
 */
public record NoRoom(Conflict conflict, Map<String, String> captions) {
  /** Copies the map. */
  public NoRoom {
    captions = Map.copyOf(captions);
  }
}
