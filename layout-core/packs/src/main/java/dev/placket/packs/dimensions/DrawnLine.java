package dev.placket.packs.dimensions;

import dev.placket.layout.units.Length;
import dev.placket.layout.units.PlanePoint;
import java.util.ArrayList;
import java.util.List;

/**
 * A line with its extension lines at one of its places, before its code is placed.
 *
 * @param its what it measures
 * @param line from end to end, on the sheet
 * @param more its extension lines
 * @param outside whether it lies in a lane
 */
record DrawnLine(
    MeasureLine its, List<PlanePoint> line, List<List<PlanePoint>> more, boolean outside) {
  /** An extension line begins so far from its spot, and ends so far beyond the line. */
  private static final Length EXTENSION = Length.mm(1);

  /** Parallel lines are at least so far apart. */
  private static final double APART = Length.mm(3).pt() - 1e-6;

  /** A line with extension lines from its spots. */
  static DrawnLine of(
      MeasureLine its, PlanePoint a, PlanePoint b, List<PlanePoint> line, boolean outside) {
    List<List<PlanePoint>> more = new ArrayList<>();
    extension(a, line.get(0), more);
    extension(b, line.get(line.size() - 1), more);
    return new DrawnLine(its, line, more, outside);
  }

  private static void extension(PlanePoint spot, PlanePoint end, List<List<PlanePoint>> more) {
    double length = Segments.length(spot, end);
    if (length > 2 * EXTENSION.pt()) {
      double gap = EXTENSION.pt() / length;
      more.add(List.of(Segments.between(spot, end, gap), Segments.between(spot, end, 1 + gap)));
    }
  }

  double length() {
    return Segments.length(line);
  }

  /** How long its extension lines are. */
  double extension() {
    return more.stream().mapToDouble(Segments::length).sum();
  }

  /** The line and its extension lines. */
  List<List<PlanePoint>> lines() {
    List<List<PlanePoint>> lines = new ArrayList<>(more);
    lines.add(line);
    return lines;
  }

  /** Whether the two lines meet, or run side by side too close. */
  boolean meets(DrawnLine other) {
    for (int i = 1; i < line.size(); i++) {
      for (int j = 1; j < other.line.size(); j++) {
        PlanePoint a = line.get(i - 1);
        PlanePoint b = line.get(i);
        PlanePoint c = other.line.get(j - 1);
        PlanePoint d = other.line.get(j);
        if (Segments.meet(a, b, c, d) || Segments.apart(a, b, c, d) < APART) {
          return true;
        }
      }
    }
    return false;
  }

  /** How often extension lines of either cross the other. */
  int crossings(DrawnLine other) {
    int count = 0;
    for (List<PlanePoint> mine : more) {
      count += crossings(mine, other.line);
      for (List<PlanePoint> theirs : other.more) {
        count += crossings(mine, theirs);
      }
    }
    for (List<PlanePoint> theirs : other.more) {
      count += crossings(theirs, line);
    }
    return count;
  }

  /** How often the line crosses others. */
  int crossings(List<List<PlanePoint>> others) {
    return others.stream().mapToInt(o -> crossings(o, line)).sum();
  }

  private static int crossings(List<PlanePoint> one, List<PlanePoint> other) {
    int count = 0;
    for (int i = 1; i < one.size(); i++) {
      for (int j = 1; j < other.size(); j++) {
        count += Segments.cross(one.get(i - 1), one.get(i), other.get(j - 1), other.get(j)) ? 1 : 0;
      }
    }
    return count;
  }
}
