package dev.placket.demo.options;

import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.ReadLimits;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.Option;

/** The option that sets what a picture may ask for before it is refused. */
public final class ReadLimitOptions {
  @Option(
      names = "--limit",
      paramLabel = "NAME=NUMBER",
      description =
          "Sets what a picture may ask for, as often as needed: pixels, bytes, memory (in bytes),"
              + " elements, depth, uses, characters, dashes, steps.")
  private Map<String, Long> limits = new LinkedHashMap<>();

  /**
   * What was asked for.
   *
   * @throws Refusal if there is no such limit, or one is not above zero
   */
  public ReadLimits limits() throws Refusal {
    ReadLimits all = ReadLimits.DEFAULT;
    for (Map.Entry<String, Long> limit : limits.entrySet()) {
      try {
        all = all.with(limit.getKey(), limit.getValue());
      } catch (IllegalArgumentException e) {
        throw Refusal.input(
            "--limit " + limit.getKey() + "=" + limit.getValue() + ": " + e.getMessage() + ".");
      }
    }
    return all;
  }
}
