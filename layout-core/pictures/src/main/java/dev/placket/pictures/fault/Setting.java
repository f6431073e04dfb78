package dev.placket.pictures.fault;

/**
 * A setting of a run that a caller may change, such as a limit. Each library has an enum of its
 * own.
 */
public interface Setting {
  /** Its name as in the API, such as {@code maximumSheets}. */
  String label();
}
