package dev.placket.packs.run;

import dev.placket.layout.callout.LeaderStyle;
import dev.placket.layout.check.Breach;
import dev.placket.layout.check.CalloutReferee;
import dev.placket.layout.check.CheckedCallout;
import dev.placket.layout.units.Rect;
import dev.placket.packs.callouts.CalloutLayout;
import dev.placket.packs.callouts.CalloutPlan;
import dev.placket.packs.callouts.LaidText;
import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.placed.PlacedFlat;
import dev.placket.packs.text.Lettering;
import dev.placket.pictures.fault.Fault;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The callouts of a sheet, all with leaders of one style.
 *
 * @param lettering for their labels
 */
record LayCallouts(Lettering lettering) {
  /** What of the scale is given up for labels on both sides, whose leaders are shorter. */
  static final double SHARE = 0.03;

  /** The flats with their callouts; null if those of some flat find no order without crossings. */
  @Nullable List<PlacedFlat> on(List<PlacedFlat> flats) {
    for (LeaderStyle style : styles(flats)) {
      List<PlacedFlat> laid = on(flats, style);
      if (laid != null) {
        return laid;
      }
    }
    return null;
  }

  /** Whether the leaders of all flats can be drawn in the style that is tried first. */
  boolean asWanted(List<PlacedFlat> flats) {
    return on(flats, styles(flats).get(0)) != null;
  }

  private static List<LeaderStyle> styles(List<PlacedFlat> flats) {
    return flats.stream()
        .map(f -> f.item().spots().plan())
        .filter(Objects::nonNull)
        .findFirst()
        .map(CalloutPlan::style)
        .map(List::of)
        .orElse(List.of(LeaderStyle.INCLINED, LeaderStyle.STRAIGHT));
  }

  private @Nullable List<PlacedFlat> on(List<PlacedFlat> flats, LeaderStyle style) {
    List<PlacedFlat> laid = new ArrayList<>();
    for (PlacedFlat flat : flats) {
      List<LaidText> its = its(flat, style);
      if (its == null) {
        return null;
      }
      laid.add(flat.with(its));
    }
    List<Breach> breaches =
        CalloutReferee.check(laid.stream().flatMap(LayCallouts::judged).toList());
    if (!breaches.isEmpty()) {
      throw new IllegalStateException("callouts break their rules: " + breaches);
    }
    return laid;
  }

  private static Stream<CheckedCallout> judged(PlacedFlat flat) {
    Rect room = flat.footprint().toBox();
    Rect ink = flat.ink().toBox();
    Map<String, List<String>> points = new TreeMap<>();
    flat.item().spots().callouts().forEach(c -> points.put(c.id(), c.points()));
    List<CheckedCallout> all = new ArrayList<>();
    for (LaidText c : flat.callouts()) {
      List<String> its = Objects.requireNonNull(points.get(c.id()));
      for (int i = 0; i < its.size(); i++) {
        double ring = c.regions().isEmpty() ? 0 : c.regions().get(i).width() / 2;
        all.add(
            new CheckedCallout(
                c.id(),
                flat.flat().id(),
                flat.spot(its.get(i)),
                ring,
                c.box(),
                c.leaders().get(i),
                room,
                ink));
      }
    }
    return all.stream();
  }

  private @Nullable List<LaidText> its(PlacedFlat flat, LeaderStyle style) {
    CalloutPlan plan = flat.item().spots().plan();
    return plan == null
        ? List.of()
        : CalloutLayout.lay(
            plan,
            flat.flat(),
            flat.ink().toBox(),
            flat.placement().scale().doubleValue(),
            style,
            lettering);
  }

  /** That only callouts or lines of measure keep the flats from having room. */
  static Fault noRoom(List<FlatSet.Item> items) {
    List<String> called = ids(items, i -> i.spots().plan() != null);
    if (called.isEmpty()) {
      String named = String.join(", ", ids(items, i -> !i.spots().dimensions().lines().isEmpty()));
      return Fault.content(
              "", "there is no room for the lines of measure of " + named + " outside the drawing")
          .remedy("show fewer measures, or set beside for some")
          .remedy("reduce the minimum size of " + named);
    }
    String named = String.join(", ", called);
    return Fault.content(
            "", "there is no room for the callouts of " + named + " beside the drawing")
        .remedy("shorten their texts, or use marks without text")
        .remedy("reduce the minimum size of " + named)
        .remedy("set 'leaders: none'");
  }

  private static List<String> ids(List<FlatSet.Item> items, Predicate<FlatSet.Item> which) {
    return items.stream().filter(which).map(i -> i.flat().id()).sorted().toList();
  }

  /** Why the callouts cannot be drawn. */
  Fault fault(List<PlacedFlat> flats) {
    boolean straight = styles(flats).contains(LeaderStyle.STRAIGHT);
    String named =
        String.join(
            ", ",
            flats.stream()
                .filter(f -> styles(flats).stream().allMatch(s -> its(f, s) == null))
                .flatMap(f -> Stream.of(f.flat().id()))
                .toList());
    Fault fault =
        Fault.content(
            "", "the leaders of the callouts of " + named + " cannot be drawn without crossings");
    return (straight ? fault : fault.remedy("set 'leaders: straight'"))
        .remedy("move points apart, or shorten or leave out callouts");
  }
}
