package dev.placket.layout.solve.search;

/** Bounds of all anchors at one node of the search, and which flats have to be looked at again. */
abstract class AnchorBounds {
  final double[] lowX;
  final double[] highX;
  final double[] lowY;
  final double[] highY;

  /** By how much two lengths may differ and count as equal. */
  final double slack;

  private final int[] queue;
  private final boolean[] queued;
  private int head;
  private int count;

  AnchorBounds(int n, double slack) {
    this.slack = slack;
    lowX = new double[n];
    highX = new double[n];
    lowY = new double[n];
    highY = new double[n];
    queue = new int[n];
    queued = new boolean[n];
  }

  final void touchAll() {
    for (int i = 0; i < queue.length; i++) {
      touch(i);
    }
  }

  final void touch(int i) {
    if (!queued[i]) {
      queued[i] = true;
      queue[(head + count++) % queue.length] = i;
    }
  }

  /** The flat that has waited longest, or -1. */
  final int next() {
    if (count == 0) {
      return -1;
    }
    int i = queue[head];
    head = (head + 1) % queue.length;
    count--;
    queued[i] = false;
    return i;
  }

  final void clear() {
    while (count > 0) {
      queued[queue[head]] = false;
      head = (head + 1) % queue.length;
      count--;
    }
  }

  final boolean raiseX(int i, double to) {
    if (to > lowX[i] + slack / 8) {
      lowX[i] = to;
      touch(i);
      return to <= highX[i] + slack;
    }
    return true;
  }

  final boolean lowerX(int i, double to) {
    if (to < highX[i] - slack / 8) {
      highX[i] = to;
      touch(i);
      return to >= lowX[i] - slack;
    }
    return true;
  }

  final boolean raiseY(int i, double to) {
    if (to > lowY[i] + slack / 8) {
      lowY[i] = to;
      touch(i);
      return to <= highY[i] + slack;
    }
    return true;
  }

  final boolean lowerY(int i, double to) {
    if (to < highY[i] - slack / 8) {
      highY[i] = to;
      touch(i);
      return to >= lowY[i] - slack;
    }
    return true;
  }
}
