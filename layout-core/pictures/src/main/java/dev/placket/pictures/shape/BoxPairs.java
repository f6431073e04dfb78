package dev.placket.pictures.shape;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Counts the pairs of segments whose boxes meet, which bounds how often paths cross: what cutting
 * areas of them takes grows with it, in time and in memory. Segments that follow one another are no
 * pair.
 */
public final class BoxPairs {
  private record Segment(int path, int at, double left, double top, double right, double bottom) {}

  private BoxPairs() {}

  /** The number of pairs among all segments of some paths, or more than the most asked for. */
  public static long of(long most, Shape... paths) {
    List<Segment> all = new ArrayList<>();
    for (int p = 0; p < paths.length; p++) {
      collect(p, paths[p], all);
    }
    all.sort(Comparator.comparingDouble(Segment::top));
    List<Segment> open = new ArrayList<>();
    long pairs = 0;
    long looks = 0;
    for (Segment s : all) {
      open.removeIf(o -> o.bottom < s.top);
      for (Segment o : open) {
        boolean next = o.path == s.path && Math.abs(o.at - s.at) == 1;
        if (!next && o.left <= s.right && s.left <= o.right) {
          pairs++;
        }
      }
      looks += open.size();
      // Each look is cheap, but they are as many as the square of the segments.
      if (pairs > most || looks > 400 * most) {
        return most + 1;
      }
      open.add(s);
    }
    return pairs;
  }

  private static void collect(int path, Shape shape, List<Segment> all) {
    double[] c = new double[6];
    double x = 0;
    double y = 0;
    int at = 0;
    for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
      int kind = i.currentSegment(c);
      int last = kind == PathIterator.SEG_CUBICTO ? 4 : kind == PathIterator.SEG_QUADTO ? 2 : 0;
      if (kind == PathIterator.SEG_CLOSE) {
        continue;
      }
      if (kind == PathIterator.SEG_MOVETO) {
        at++;
      } else {
        double left = x;
        double top = y;
        double right = x;
        double bottom = y;
        for (int k = 0; k <= last; k += 2) {
          left = Math.min(left, c[k]);
          right = Math.max(right, c[k]);
          top = Math.min(top, c[k + 1]);
          bottom = Math.max(bottom, c[k + 1]);
        }
        all.add(new Segment(path, at, left, top, right, bottom));
      }
      at++;
      x = c[last];
      y = c[last + 1];
    }
  }
}
