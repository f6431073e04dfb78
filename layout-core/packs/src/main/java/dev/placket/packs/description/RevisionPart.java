package dev.placket.packs.description;

/** What a table lists of the revisions of a pack. */
public enum RevisionPart {
  /** The log: revision, date, by whom, sheet and change. */
  LOG,
  /** The sheets, each with the last revision that changed it. */
  SHEETS
}
