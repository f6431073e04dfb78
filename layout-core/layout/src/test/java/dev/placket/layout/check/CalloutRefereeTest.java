package dev.placket.layout.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.placket.layout.units.PlanePoint;
import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** A column of two callouts by hand, and for each rule a change that breaks it. */
class CalloutRefereeTest {
  private static final Rect ROOM = new Rect(0, 0, 200, 120);
  private static final Rect INK = new Rect(0, 0, 100, 100);

  private static CheckedCallout callout(String id, double spotY, double labelTop) {
    PlanePoint spot = new PlanePoint(50, spotY);
    double port = labelTop + 5;
    return new CheckedCallout(
        id,
        "front",
        spot,
        0,
        new Rect(120, labelTop, 180, labelTop + 20),
        List.of(spot, new PlanePoint(50 + Math.abs(port - spotY), port), new PlanePoint(118, port)),
        ROOM,
        INK);
  }

  private static List<String> rules(UnaryOperator<CheckedCallout> change) {
    List<CheckedCallout> all = new ArrayList<>();
    all.add(change.apply(callout("a", 20, 10)));
    all.add(callout("b", 60, 50));
    return CalloutReferee.check(all).stream().map(Breach::rule).distinct().toList();
  }

  private static CheckedCallout with(CheckedCallout c, Rect label, List<PlanePoint> leader) {
    return new CheckedCallout(
        c.id(), c.flat(), c.spot(), c.ring(), label, leader, c.room(), c.ink());
  }

  private static List<PlanePoint> line(double... xy) {
    List<PlanePoint> line = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      line.add(new PlanePoint(xy[i], xy[i + 1]));
    }
    return line;
  }

  @Test
  void aColumnByHandBreaksNothing() {
    assertEquals(List.of(), rules(c -> c));
  }

  @Test
  void aLeaderStartsAtItsSpot() {
    assertEquals(
        List.of("leader starts"), rules(c -> with(c, c.label(), line(52, 20, 57, 15, 118, 15))));
  }

  @Test
  void aLeaderEndsAtItsLabel() {
    assertEquals(
        List.of("leader ends"), rules(c -> with(c, c.label(), line(50, 20, 55, 15, 110, 15))));
  }

  @Test
  void leadersDoNotCrossNorTouch() {
    assertEquals(
        List.of("leader crosses"),
        rules(c -> with(c, c.label(), line(50, 20, 80, 58, 100, 15, 118, 15))));
    assertEquals(
        List.of("leader crosses"),
        rules(c -> with(c, c.label(), line(50, 20, 80, 55, 100, 15, 118, 15))));
  }

  private static CheckedCallout ringed(CheckedCallout c, double x, double y, double ring) {
    PlanePoint spot = new PlanePoint(x, y);
    return new CheckedCallout(
        c.id(), c.flat(), spot, ring, c.label(), line(x + ring, y, 118, 15), c.room(), c.ink());
  }

  @Test
  void aLeaderStartsAtItsRingAndNoneRunsThroughThatOfAnother() {
    assertEquals(List.of(), rules(c -> ringed(c, 40, 30, 20)));
    // The spot of b, at 50 and 60, is 31.6 from 40 and 30.
    assertEquals(List.of(), rules(c -> ringed(c, 40, 30, 25)));
    assertEquals(List.of("leader through"), rules(c -> ringed(c, 75, 50, 22)));
    assertEquals(
        List.of("leader starts"),
        rules(
            c -> {
              CheckedCallout r = ringed(c, 40, 30, 20);
              return with(r, r.label(), line(58, 30, 118, 15));
            }));
    assertEquals(List.of("ring outside"), rules(c -> ringed(c, 20, 30, 21)));
  }

  @Test
  void leadersOfOneCalloutMeetAtItsLabel() {
    List<CheckedCallout> all = List.of(callout("a", 20, 10), callout("a", 60, 10));
    assertEquals(List.of(), CalloutReferee.check(all));
  }

  @Test
  void noLeaderRunsThroughALabel() {
    assertEquals(
        List.of("leader through"),
        rules(c -> with(c, c.label(), line(50, 20, 119, 40, 150, 51, 160, 40, 150, 30))));
  }

  @Test
  void aLabelStandsBesideTheDrawingAndOthers() {
    assertEquals(
        List.of("label over"),
        rules(c -> with(c, new Rect(99, 10, 180, 30), line(50, 20, 55, 15, 98, 15))));
    assertEquals(
        List.of("label over"),
        rules(c -> with(c, new Rect(120, 10, 180, 51), line(50, 20, 55, 15, 118, 15))));
  }

  @Test
  void allStaysInTheFootprint() {
    assertEquals(
        List.of("callout outside"),
        rules(c -> with(c, new Rect(120, 10, 201, 30), line(50, 20, 55, 15, 118, 15))));
    assertEquals(
        List.of("callout outside"),
        rules(c -> with(c, c.label(), line(50, 20, 60, -1, 100, 15, 118, 15))));
  }
}
