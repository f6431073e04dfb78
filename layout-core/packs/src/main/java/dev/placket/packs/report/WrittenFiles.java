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
 * @param removed names of files of an earlier run that this one does not write again
 */
public record WrittenFiles(
    Path folder,
    List<String> names,
    String main,
    long mainBytes,
    String page,
    boolean written,
    List<String> removed) {
  /** Copies the lists. */
  public WrittenFiles {
    names = List.copyOf(names);
    removed = List.copyOf(removed);
  }
}
