package dev.placket.packs.report;

import java.nio.file.Path;
import java.util.List;

/**
 * The files of a run.
 *
 * @param folder the folder for them
 * @param names their names, in the order of the report
 * @param main the name of the file to send
 * @param mainBytes the size of that file
 * @param page the name of the report page
 * @param written whether they are written; in a check they are not
 */
public record WrittenFiles(
    Path folder, List<String> names, String main, long mainBytes, String page, boolean written) {
  /** Copies the list. */
  public WrittenFiles {
    names = List.copyOf(names);
  }
}
