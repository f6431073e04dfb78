package dev.placket.layout.fit;

import java.util.function.BooleanSupplier;

/** Counts the steps of a search against its budget, and asks now and then whether to go on. */
final class Steps {
  private static final int ASK_EVERY = 64;

  private final long most;
  private final BooleanSupplier cancelled;
  private long taken;
  private boolean stopped;

  Steps(long most, BooleanSupplier cancelled) {
    this.most = most;
    this.cancelled = cancelled;
  }

  /** Takes one step; false if there is none left. */
  boolean take() {
    if (stopped || taken >= most) {
      stopped = true;
      return false;
    }
    if (taken % ASK_EVERY == 0 && cancelled.getAsBoolean()) {
      stopped = true;
      return false;
    }
    taken++;
    return true;
  }

  boolean over() {
    return stopped;
  }

  long taken() {
    return taken;
  }
}
