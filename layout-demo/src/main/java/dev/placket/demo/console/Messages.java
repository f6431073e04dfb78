package dev.placket.demo.console;

import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.Visible;
import java.io.PrintStream;
import java.util.List;

/** What is wrong, a line each, for whoever called the command. */
public final class Messages {
  private Messages() {}

  /** Prints each on a line of its own, whatever names it quotes. */
  public static void print(PrintStream to, List<String> messages) {
    messages.forEach(m -> to.println("placket: " + Visible.words(m)));
  }

  /** Prints the message of each fault, settings called by their options. */
  public static void printFaults(PrintStream to, List<Fault> faults) {
    print(to, faults.stream().map(f -> f.message(OptionNames.ALL)).toList());
  }
}
