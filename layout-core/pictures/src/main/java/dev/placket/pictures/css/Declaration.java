package dev.placket.pictures.css;

/**
 * A property and its value as a sheet states them.
 *
 * @param name in small letters, unless it is a custom property
 * @param value without comments and without {@code !important}
 */
record Declaration(String name, String value, boolean important) {
  boolean isCustom() {
    return name.startsWith("--");
  }
}
