package dev.placket.benchmarks.jmh;

import dev.placket.benchmarks.pages.PageFile;
import dev.placket.benchmarks.pages.ReferencePage;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Outcome;
import dev.placket.layout.solve.Fitter;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/** Solves all reference sheets of one number of flats, warm, on the default budget. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class WarmSolve {
  /** How many flats. */
  @Param({"2", "6", "8", "10", "16"})
  public int flats;

  private List<FitRequest> requests = List.of();

  /** Reads the sheets. */
  @Setup
  public void read() {
    requests =
        PageFile.builtIn("pages").stream()
            .filter(p -> p.flats().size() == flats)
            .map(ReferencePage::request)
            .toList();
  }

  /** Time for all seven or eight sheets together. */
  @Benchmark
  public void allSheets(Blackhole hole) {
    for (FitRequest r : requests) {
      Outcome outcome = Fitter.fit(r);
      hole.consume(outcome);
    }
  }
}
