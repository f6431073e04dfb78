package dev.placket.benchmarks;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Unmatched;

/** Hands its arguments to JMH. */
@Command(name = "jmh", description = "Runs the JMH benchmarks; arguments as JMH takes them.")
final class JmhCommand implements Callable<Integer> {
  @Unmatched private List<String> arguments = List.of();

  @Override
  public Integer call() throws IOException {
    org.openjdk.jmh.Main.main(arguments.toArray(String[]::new));
    return 0;
  }
}
