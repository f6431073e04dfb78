package dev.placket.demo.options;

import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.fault.Fault;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.Option;

/** The option that sets the limits for reading one picture. */
public final class ReadLimitOptions {
  @Option(
      names = "--limit",
      paramLabel = "NAME=NUMBER",
      description =
          "Sets a limit for reading one picture; repeatable. Names: pixels, bytes, memory (in"
              + " bytes), elements, depth, uses, characters, dashes, steps.")
  private Map<String, Long> limits = new LinkedHashMap<>();

  /**
   * The limits that the options give.
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
            Fault.of(
                Fault.Kind.SETTING,
                "--limit " + limit.getKey() + "=" + limit.getValue(),
                String.valueOf(e.getMessage())));
      }
    }
    return all;
  }
}
