package dev.placket.workbooks.read;

import dev.placket.workbooks.parts.Visitor;
import dev.placket.workbooks.parts.XmlElement;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads anchors, wherever they stand: in a drawing part, or among a worksheet's controls. */
final class DrawnReader implements Visitor {
  private static final Set<String> ANCHORS =
      Set.of("twoCellAnchor", "oneCellAnchor", "absoluteAnchor", "anchor");

  private final List<DrawnThing> things = new ArrayList<>();
  private int anchorDepth = -1;
  private int depth;
  private @Nullable String name;
  private @Nullable String embed;
  private long @Nullable [] spot;
  private long @Nullable [] from;
  private long @Nullable [] to;
  private long[] position = new long[2];
  private long[] extent = new long[2];
  private final StringBuilder text = new StringBuilder();

  List<DrawnThing> things() {
    return things;
  }

  @Override
  public void start(XmlElement e) {
    depth = e.depth() + 1;
    text.setLength(0);
    if (anchorDepth < 0 && ANCHORS.contains(e.name())) {
      begin(e.depth());
    } else if (anchorDepth >= 0) {
      inside(e);
    }
  }

  private void begin(int at) {
    anchorDepth = at;
    name = null;
    embed = null;
    from = null;
    to = null;
    position = new long[2];
    extent = new long[2];
  }

  private void inside(XmlElement e) {
    boolean direct = e.depth() == anchorDepth + 1;
    switch (e.name()) {
      case "from", "to" -> {
        if (direct) {
          spot = new long[4];
          from = e.name().equals("from") ? spot : from;
          to = e.name().equals("to") ? spot : to;
        }
      }
      case "ext" -> {
        if (direct) {
          extent = new long[] {e.emu("cx"), e.emu("cy")};
        }
      }
      case "pos" -> {
        if (direct) {
          position = new long[] {e.emu("x"), e.emu("y")};
        }
      }
      case "cNvPr" -> name = name == null ? e.get("name", "") : name;
      case "blip" -> embed = embed == null ? e.relation("embed") : embed;
      default -> {
        // What a shape looks like is no matter here.
      }
    }
  }

  @Override
  public void text(String more) {
    if (spot != null) {
      text.append(more);
    }
  }

  @Override
  public void end(String ended) {
    depth--;
    long[] s = spot;
    if (s != null) {
      switch (ended) {
        case "col" -> s[0] = number();
        case "colOff" -> s[1] = number();
        case "row" -> s[2] = number();
        case "rowOff" -> s[3] = number();
        case "from", "to" -> spot = null;
        default -> {
          // Nothing else stands in a spot.
        }
      }
    }
    if (depth == anchorDepth && anchorDepth >= 0) {
      finish();
    }
  }

  /** Kept to what an {@code int} holds: a column, a row, or less than the longest side of one. */
  private long number() {
    String said = text.toString().strip();
    if (!said.matches("-?[0-9]{1,18}")) {
      throw new NumberFormatException("'" + said + "' in an anchor is no whole number");
    }
    long number = Long.parseLong(said);
    return Math.max(Integer.MIN_VALUE, Math.min(Integer.MAX_VALUE, number));
  }

  private void finish() {
    anchorDepth = -1;
    things.add(
        new DrawnThing(
            name == null ? "" : name,
            embed,
            spot(from),
            spot(to),
            position[0],
            position[1],
            extent[0],
            extent[1]));
  }

  private static DrawnThing.@Nullable Spot spot(long @Nullable [] s) {
    return s == null ? null : new DrawnThing.Spot((int) s[0], s[1], (int) s[2], s[3]);
  }
}
