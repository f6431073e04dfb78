package dev.placket.pictures.svg;

import dev.placket.pictures.svg.DrawnCase.Check;
import dev.placket.pictures.svg.DrawnCase.Idle;
import dev.placket.pictures.svg.DrawnCase.Note;
import dev.placket.pictures.svg.DrawnCase.Point;
import dev.placket.pictures.svg.DrawnCase.Points;
import dev.placket.pictures.svg.DrawnCase.Refused;
import dev.placket.pictures.svg.DrawnCase.Said;
import dev.placket.pictures.svg.DrawnCase.Same;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What stands to the right of an arrow. */
final class Checks {
  private static final Pattern POINT = Pattern.compile("([\\d.]+),([\\d.]+) #([0-9a-f]{6})");

  /** Levels by which a colour may be rounded otherwise. */
  private static final int ROUNDED = 4;

  /** Levels by which a gradient over 16 units changes within a pixel. */
  private static final int NEAR = 9;

  private Checks() {}

  static Check of(String place, String written) {
    if (written.equals("idle")) {
      return new Idle();
    }
    if (written.startsWith("said ")) {
      return new Said(written.substring(5).strip());
    }
    if (written.startsWith("note ")) {
      return new Note(written.substring(5).strip());
    }
    if (written.equals("refused")) {
      return new Refused();
    }
    if (written.startsWith("at ") || written.startsWith("near ")) {
      List<Point> points = new ArrayList<>();
      Matcher m = POINT.matcher(written);
      while (m.find()) {
        points.add(
            new Point(
                Double.parseDouble(m.group(1)),
                Double.parseDouble(m.group(2)),
                Integer.parseInt(m.group(3), 16)));
      }
      return new Points(points, written.startsWith("near") ? NEAR : ROUNDED);
    }
    if (written.startsWith("<")) {
      return new Same(written);
    }
    throw new IllegalStateException(
        place + ": idle, refused, note KEY, said TEXT, at or near X,Y #RRGGBB ..., or a fragment");
  }
}
