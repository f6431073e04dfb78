package dev.placket.packs.report;

import dev.placket.layout.fit.Conflict;
import java.util.Map;

/**
 * Why a sheet does not hold its flats.
 *
 * @param conflict what cannot hold together, and what would help
 * @param captions what the flat of an id is called
 */
public record NoRoom(Conflict conflict, Map<String, String> captions) {
  /** Copies the map. */
  public NoRoom {
    captions = Map.copyOf(captions);
  }
}
