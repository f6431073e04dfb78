package dev.placket.packs.report;

import java.nio.file.Path;
import java.util.List;

/**
 * The files of a run.
 *
 * @param folder where they went
 * @param names what they are called, in the order in which they are listed
 * @param main the one that is sent out, as it is called
 * @param mainBytes how large that is
 * @param page the report page, as it is called
 */
public record Made(Path folder, List<String> names, String main, long mainBytes, String page) {
  /** Copies the list. */
  public Made {
    names = List.copyOf(names);
  }
}
