package dev.placket.pictures.fault;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a reader can do about a fault: one way or several, any of which helps.
 *
 * @param ways the ways, the usual one first; empty where the fault itself says enough
 */
public record Remedy(List<Way> ways) {
  /** No way that the fault does not say itself. */
  public static final Remedy NONE = new Remedy(List.of());

  /**
   * One way.
   *
   * @param words a phrase in the imperative, such as "raise the limit"
   * @param setting the setting to change; null for a way that needs none
   * @param value the value to give it; empty where the reader chooses one
   */
  public record Way(String words, @Nullable Setting setting, String value) {
    private String text(SettingNames names) {
      return setting == null ? words : words + " " + names.use(setting, value);
    }
  }

  /** Copies the list. */
  public Remedy {
    ways = List.copyOf(ways);
  }

  /** One way without a setting. */
  public static Remedy of(String words) {
    return NONE.or(words);
  }

  /** One way that changes a setting. */
  public static Remedy of(String words, Setting setting) {
    return NONE.or(words, setting);
  }

  /** These ways and one without a setting. */
  public Remedy or(String words) {
    return or(new Way(words, null, ""));
  }

  /** These ways and one that changes a setting. */
  public Remedy or(String words, Setting setting) {
    return or(new Way(words, setting, ""));
  }

  /** These ways and one more. */
  public Remedy or(Way way) {
    List<Way> more = new ArrayList<>(ways);
    more.add(way);
    return new Remedy(more);
  }

  /** The settings that the ways change, in their order. */
  public List<Setting> settings() {
    List<Setting> settings = new ArrayList<>();
    for (Way way : ways) {
      Setting setting = way.setting();
      if (setting != null) {
        settings.add(setting);
      }
    }
    return List.copyOf(settings);
  }

  /** The ways in one phrase; empty where there is none. */
  String text(SettingNames names) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < ways.size(); i++) {
      text.append(i == 0 ? "" : i == ways.size() - 1 ? ", or " : ", ");
      text.append(ways.get(i).text(names));
    }
    return text.toString();
  }
}
