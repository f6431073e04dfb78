package dev.placket.packs.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;

/** Writes further fields of an object that is open. */
@FunctionalInterface
public interface MoreJson {
  /** Writes them. */
  void write(JsonGenerator json) throws IOException;
}
