package dev.placket.pictures.base;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** How a layer meets what lies under it: the modes that CSS and PDF have in common. */
public enum Blend {
  /** It covers what lies under it. */
  NORMAL,
  /** Both are multiplied, as inks are: a shade darkens what is under it. */
  MULTIPLY,
  /** The inverse of both multiplied. */
  SCREEN,
  /** Multiplied where it is dark below, screened where light. */
  OVERLAY,
  /** The darker of both. */
  DARKEN,
  /** The lighter of both. */
  LIGHTEN,
  /** Brightens what is under it. */
  COLOR_DODGE,
  /** Darkens what is under it. */
  COLOR_BURN,
  /** Multiplied where it is dark itself, screened where light. */
  HARD_LIGHT,
  /** A softer form of the same. */
  SOFT_LIGHT,
  /** The difference of both. */
  DIFFERENCE,
  /** A softer form of the difference. */
  EXCLUSION,
  /** Its hue with the saturation and luminosity below. */
  HUE,
  /** Its saturation with the hue and luminosity below. */
  SATURATION,
  /** Its hue and saturation with the luminosity below. */
  COLOR,
  /** Its luminosity with the hue and saturation below. */
  LUMINOSITY;

  /** The mode of a word of CSS, or null if it has none. */
  public static @Nullable Blend of(String word) {
    for (Blend each : values()) {
      if (each.word().equals(word.strip().toLowerCase(Locale.ROOT))) {
        return each;
      }
    }
    return null;
  }

  /** As CSS writes it: multiply, color-dodge. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
