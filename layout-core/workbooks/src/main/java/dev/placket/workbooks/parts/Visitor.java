package dev.placket.workbooks.parts;

import dev.placket.packs.refusal.Refusal;

/** Takes the elements and texts of a part in document order. */
public interface Visitor {
  /** An element begins. */
  void start(XmlElement element) throws Refusal;

  /** The element of that name ends. */
  default void end(String name) throws Refusal {}

  /** The text between two tags. */
  default void text(String text) throws Refusal {}
}
