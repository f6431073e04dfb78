package dev.placket.packs.sample;

/** What the buyer decides on a whole sample. */
public enum SampleVerdict {
  /** As it is. */
  APPROVED,
  /** With the comments carried out. */
  APPROVED_WITH_COMMENTS,
  /** A further sample is to be made. */
  RESUBMIT
}
