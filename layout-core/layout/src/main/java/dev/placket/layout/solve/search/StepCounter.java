package dev.placket.layout.solve.search;

import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/** Counts the steps of a search against its budget, and asks now and then whether to go on. */
public final class StepCounter {
  private static final int ASK_EVERY = 64;

  private final long most;
  private final BooleanSupplier cancelled;
  private final @Nullable StepCounter whole;
  private long taken;
  private boolean stopped;

  /** A counter up to {@code most} steps, which a true {@code cancelled} ends early. */
  public StepCounter(long most, BooleanSupplier cancelled) {
    this(most, cancelled, null);
  }

  private StepCounter(long most, BooleanSupplier cancelled, @Nullable StepCounter whole) {
    this.most = most;
    this.cancelled = cancelled;
    this.whole = whole;
  }

  /** Half of what is left, to be taken from here as well. */
  public StepCounter half() {
    return new StepCounter((most - taken) / 2, cancelled, this);
  }

  /** Takes one step; false if there is none left. */
  boolean take() {
    if (stopped || taken >= most) {
      stopped = true;
      return false;
    }
    if (whole == null && taken % ASK_EVERY == 0 && cancelled.getAsBoolean()) {
      stopped = true;
      return false;
    }
    if (whole != null && !whole.take()) {
      stopped = true;
      return false;
    }
    taken++;
    return true;
  }

  boolean over() {
    return stopped;
  }

  /** The steps taken so far. */
  public long taken() {
    return taken;
  }

  /** What ends the search early. */
  public BooleanSupplier cancelled() {
    return cancelled;
  }
}
