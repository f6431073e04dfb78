package dev.placket.packs.flats;

import dev.placket.layout.flat.Role;
import dev.placket.layout.units.Length;
import dev.placket.packs.language.Phrases;
import dev.placket.packs.language.StockPhrase;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Puts the scales of flats beside one another into words: in every scale group against its front,
 * or else against the one at the largest scale.
 */
public final class ScaleLines {
  /** Scales are the same within this. */
  private static final double SAME = 1e-9;

  private ScaleLines() {}

  /**
   * A flat as its group knows it.
   *
   * @param id the flat
   * @param role its role
   * @param name what the sheet calls it in a language; blank for nothing
   * @param group its scale group; null for none
   * @param ratio its scale over the group's common scale
   * @param stated whether the ratio is stated, rather than that of its role
   * @param unit the real length of a unit of it; null where it is not stated
   */
  public record Member(
      String id,
      Role role,
      Function<String, String> name,
      @Nullable String group,
      double ratio,
      boolean stated,
      @Nullable Length unit) {
    private String against(Phrases phrases, String language) {
      return role.isView()
          ? phrases.in(StockPhrase.view(role), language).text()
          : name.apply(language);
    }

    private boolean isNamed(Phrases phrases) {
      return !against(phrases, phrases.languages().get(0)).isBlank();
    }
  }

  /**
   * Two flats of a group whose units differ, though nothing says that this is meant.
   *
   * @param lead the flat that leads the group
   * @param other the flat in another unit
   */
  public record Unlike(Member lead, Member other) {
    /** What is asked, without the place. */
    public String question() {
      return finding() + ". Is the unit of one of them mistaken?";
    }

    /** That they share one scale although their units differ. */
    public String finding() {
      return lead.id
          + " is drawn in units of "
          + spelled(lead.unit)
          + " and "
          + other.id
          + " in units of "
          + spelled(other.unit)
          + ", yet they share one scale";
    }

    private static String spelled(@Nullable Length unit) {
      String mm = unit == null ? "?" : String.format(Locale.ROOT, "%.6f", unit.mm());
      return mm.replaceAll("\\.?0+$", "") + " mm";
    }
  }

  /** The line of each flat by its id; none for a photograph of which no real length is stated. */
  public static Map<String, ScaleLine> of(List<Member> members, Phrases phrases) {
    Map<String, Member> leads = leads(members);
    Map<String, ScaleLine> lines = new LinkedHashMap<>();
    for (Member m : members) {
      boolean stated = m.unit != null;
      if (stated || m.role != Role.PHOTO) {
        Member lead = m.group == null ? null : leads.get(m.group);
        lines.put(
            m.id, lead == null ? ScaleLine.alone(stated, phrases) : against(lead, m, phrases));
      }
    }
    return lines;
  }

  private static ScaleLine against(Member lead, Member m, Phrases phrases) {
    boolean stated = m.unit != null;
    double ratio = m.ratio / lead.ratio;
    if (m.unit != null && lead.unit != null) {
      ratio *= lead.unit.pt() / m.unit.pt();
    }
    return lead == m || Math.abs(ratio - 1) < SAME || !lead.isNamed(phrases)
        ? ScaleLine.alone(stated, phrases)
        : new ScaleLine(l -> lead.against(phrases, l), ratio, stated, false, null, phrases);
  }

  /** Flats of one group in different units, where no stated ratio says why. */
  public static List<Unlike> unlike(List<Member> members) {
    Map<String, Member> leads = leads(members);
    List<Unlike> unlike = new ArrayList<>();
    for (Member m : members) {
      Member lead = m.group == null ? null : leads.get(m.group);
      if (lead != null && lead.unit != null && m.unit != null && !m.stated) {
        double ratio = m.unit.pt() / lead.unit.pt();
        if (Math.abs(ratio - 1) > SAME) {
          unlike.add(new Unlike(lead, m));
        }
      }
    }
    return unlike;
  }

  private static Map<String, Member> leads(List<Member> members) {
    Map<String, Member> leads = new LinkedHashMap<>();
    for (Member m : members) {
      if (m.group != null) {
        leads.merge(m.group, m, ScaleLines::lead);
      }
    }
    return leads;
  }

  private static Member lead(Member a, Member b) {
    if (a.role == Role.FRONT || b.role == Role.FRONT) {
      return a.role == Role.FRONT ? a : b;
    }
    return b.ratio > a.ratio ? b : a;
  }
}
