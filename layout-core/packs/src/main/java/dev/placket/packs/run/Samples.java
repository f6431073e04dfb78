package dev.placket.packs.run;

import dev.placket.layout.density.DensityTargets;
import dev.placket.packs.compose.Composer;
import dev.placket.packs.compose.PackLimits;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackReader;
import dev.placket.packs.description.RangeReader;
import dev.placket.packs.flats.Reading;
import dev.placket.packs.measure.MeasureList;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.sample.SampleCheck;
import dev.placket.pictures.fault.Fault;
import java.nio.file.Path;
import java.util.List;

/**
 * The samples of a description, judged; no picture is read and nothing is placed.
 *
 * @param described the description
 * @param list the points of measure
 * @param checks the samples in the order of their rounds, one or more
 */
public record Samples(Described described, MeasureList list, List<SampleCheck> checks) {
  /** Copies the list. */
  public Samples {
    checks = List.copyOf(checks);
  }

  /**
   * Reads the samples of a description.
   *
   * @param file the description
   * @param ranges reads ranges of workbooks
   * @throws Refusal if the description or a file that it names is at fault, or it has no samples
   */
  public static Samples read(Path file, RangeReader ranges) throws Refusal {
    Described described = PackReader.read(file);
    Composer composer =
        new Composer(
            described,
            DensityTargets.DEFAULT,
            false,
            Composer.lettering(described),
            Reading.DEFAULT,
            PackLimits.DEFAULT.rows(),
            ranges);
    described.faults().refuse();
    MeasureList list = composer.measures();
    if (list == null || composer.checks().isEmpty()) {
      throw Refusal.input(
          Fault.content(file, "has no samples").remedy("state them under 'samples'"));
    }
    return new Samples(described, list, composer.checks());
  }

  /**
   * A sample.
   *
   * @throws Refusal if there is none of that name
   */
  public SampleCheck check(String name) throws Refusal {
    List<String> known = checks.stream().map(SampleCheck::name).toList();
    return checks.stream()
        .filter(c -> c.name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                Refusal.input(
                    Fault.content(described.file(), "has no sample '" + name + "' under checks")
                        .remedy("name one of " + String.join(", ", known))));
  }
}
