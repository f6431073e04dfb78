package dev.placket.demo.workbook.parts;

import java.util.ArrayDeque;
import java.util.Deque;

/** Names of parts inside a package (ISO/IEC 29500-2), without the leading slash. */
public final class PartNames {
  private PartNames() {}

  /** The part that holds the relations of another; of the package itself for the empty name. */
  public static String relationsOf(String part) {
    int slash = part.lastIndexOf('/') + 1;
    return part.substring(0, slash) + "_rels/" + part.substring(slash) + ".rels";
  }

  /** The part that a relation's target names, seen from the part that holds the relation. */
  public static String resolve(String from, String target) {
    Deque<String> path = new ArrayDeque<>();
    String whole = target.startsWith("/") ? target : folder(from) + target;
    for (String step : whole.split("/")) {
      if (step.equals("..")) {
        path.pollLast();
      } else if (!step.isEmpty() && !step.equals(".")) {
        path.addLast(step);
      }
    }
    return String.join("/", path);
  }

  private static String folder(String part) {
    return part.substring(0, part.lastIndexOf('/') + 1);
  }
}
