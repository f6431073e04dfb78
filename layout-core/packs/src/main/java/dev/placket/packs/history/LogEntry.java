package dev.placket.packs.history;

/**
 * An entry of the log of revisions.
 *
 * @param revision the revision that made the change
 * @param date its date; blank where it is not known
 * @param by who issued it; blank where it is not known
 * @param sheet the name of the changed sheet; blank for the whole pack
 * @param what the change, in words
 */
public record LogEntry(String revision, String date, String by, String sheet, String what) {}
