package dev.placket.layout.fit;

import com.fasterxml.jackson.annotation.JsonAutoDetect;
import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.annotation.JsonDeserialize;
import com.fasterxml.jackson.databind.util.StdConverter;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Held;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Limits;
import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.ScaleGroup;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.flat.Spacing.PairGap;
import dev.placket.layout.flat.Spacing.RoleClearance;
import dev.placket.layout.flat.Surround;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.PlanePoint;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** How another program can carry a request as JSON: by the parts that its accessors give. */
final class CarriedAsJson {
  private CarriedAsJson() {}

  static ObjectMapper mapper() {
    return new ObjectMapper()
        .addMixIn(Flat.class, OfFlat.class)
        .addMixIn(Spacing.class, OfSpacing.class);
  }

  @JsonAutoDetect(fieldVisibility = Visibility.ANY)
  @JsonDeserialize(converter = ToFlat.class)
  private abstract static class OfFlat {}

  @JsonAutoDetect(fieldVisibility = Visibility.ANY)
  @JsonDeserialize(converter = ToSpacing.class)
  private abstract static class OfSpacing {}

  private record FlatParts(
      String id,
      Role role,
      InkedBox ink,
      Surround surround,
      List<String> windows,
      @Nullable ScaleGroup group,
      double share,
      Limits limits,
      Held held,
      @Nullable Length unitLength,
      Map<String, PlanePoint> points,
      @Nullable String levelOn,
      boolean mayFlow,
      @Nullable String list) {
    @JsonCreator
    FlatParts {}
  }

  private record SpacingParts(
      Length gap, Length clearance, List<PairGap> pairs, List<RoleClearance> roles) {
    @JsonCreator
    SpacingParts {}
  }

  private static final class ToFlat extends StdConverter<FlatParts, Flat> {
    @Override
    public Flat convert(FlatParts p) {
      Flat flat =
          Flat.of(p.id, p.role, p.ink)
              .withSurround(p.surround)
              .withWindows(p.windows)
              .withShare(p.share)
              .withLimits(p.limits)
              .withHeld(p.held)
              .withPoints(p.points, p.levelOn)
              .withMayFlow(p.mayFlow)
              .withList(p.list);
      flat = p.group == null ? flat : flat.withGroup(p.group.name(), p.group.ratio());
      return p.unitLength == null ? flat : flat.withUnitLength(p.unitLength);
    }
  }

  private static final class ToSpacing extends StdConverter<SpacingParts, Spacing> {
    @Override
    public Spacing convert(SpacingParts p) {
      return Spacing.NONE
          .withGap(p.gap)
          .withClearance(p.clearance)
          .withPairs(p.pairs)
          .withRoles(p.roles);
    }
  }
}
