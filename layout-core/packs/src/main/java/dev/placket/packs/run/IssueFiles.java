package dev.placket.packs.run;

import java.util.Map;
import java.util.function.Function;

/**
 * That the files of a run are an issue: they go into a folder of their own, whole or not at all.
 *
 * @param stem what the names of all files begin with
 * @param manifest makes the manifest from the other files
 */
public record IssueFiles(String stem, Function<Map<String, byte[]>, byte[]> manifest) {
  /** How the names of manifests end. */
  public static final String MANIFEST = "-manifest.json";

  /** The name of the manifest. */
  String manifestName() {
    return stem + MANIFEST;
  }

  /** The name of the values. */
  String json() {
    return stem + "-fit.json";
  }
}
