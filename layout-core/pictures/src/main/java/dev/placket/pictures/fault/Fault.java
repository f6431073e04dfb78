package dev.placket.pictures.fault;

import org.jspecify.annotations.Nullable;

/**
 * One thing at fault in a file or a call.
 *
 * @param kind what sort of fault
 * @param file the file or folder as the caller named it; empty for the call itself
 * @param place where in it
 * @param found what was found there: a phrase whose subject is the file or the place or, where
 *     something was expected, the thing found
 * @param expected what was expected instead; null where {@code found} says what is wrong
 * @param remedy what to do about it
 */
public record Fault(
    Kind kind, String file, Place place, String found, @Nullable Expected expected, Remedy remedy) {
  /** Sorts of faults. */
  public enum Kind {
    /** A file or folder is absent, or cannot be read. */
    UNREADABLE,
    /** What is in a file is wrong, damaged or not supported. */
    CONTENT,
    /** More than a limit. */
    LIMIT,
    /** A picture cannot be drawn exactly as its file says. */
    DIFFERENCE,
    /** The caller gave a setting a wrong value. */
    SETTING,
    /** A file cannot be written, or would be overwritten. */
    OUTPUT,
    /** Flats have no room. */
    NO_ROOM
  }

  /**
   * What was expected.
   *
   * @param words what to write there
   * @param nearest the known word nearest to what was found, or null
   */
  public record Expected(String words, @Nullable String nearest) {}

  /** A fault of a file as a whole, or of the call where the file is empty; without a remedy. */
  public static Fault of(Kind kind, Object file, String found) {
    return new Fault(kind, file.toString(), Place.WHOLE, found, null, Remedy.NONE);
  }

  /** A file or folder that is absent or cannot be read. */
  public static Fault unreadable(Object file, String found) {
    return of(Kind.UNREADABLE, file, found);
  }

  /** A file whose content is wrong, damaged or not supported. */
  public static Fault content(Object file, String found) {
    return of(Kind.CONTENT, file, found);
  }

  /** A file that asks for more than a limit. */
  public static Fault limit(Object file, String found) {
    return of(Kind.LIMIT, file, found);
  }

  /** A file or folder that cannot be written, or would be overwritten. */
  public static Fault output(Object file, String found) {
    return of(Kind.OUTPUT, file, found);
  }

  /** A setting that was given a wrong value. */
  public static Fault setting(Setting setting, Object value, String found) {
    return of(Kind.SETTING, "", found).at(new Place.Value(setting, value.toString()));
  }

  /** Flats that have no room. */
  public static Fault noRoom(String found) {
    return of(Kind.NO_ROOM, "", found);
  }

  /** The same at a place in the file. */
  public Fault at(Place where) {
    return new Fault(kind, file, where, found, expected, remedy);
  }

  /** The same in a part of the file, by the name that messages call it. */
  public Fault in(String part) {
    return at(Place.part(part));
  }

  /** The same with what was expected. */
  public Fault expecting(String words, @Nullable String nearest) {
    return new Fault(kind, file, place, found, new Expected(words, nearest), remedy);
  }

  /** The same with the ways of a remedy instead of its own. */
  public Fault with(Remedy ways) {
    return new Fault(kind, file, place, found, expected, ways);
  }

  /** The same with one more way out. */
  public Fault remedy(String words) {
    return with(remedy.or(words));
  }

  /** The same with one more way out, which changes a setting. */
  public Fault remedy(String words, Setting setting) {
    return with(remedy.or(words, setting));
  }

  /** The message in the words of the API, on one line. */
  public String message() {
    return message(SettingNames.LIBRARY);
  }

  /** The message on one line, settings called as the program calls them. */
  public String message(SettingNames names) {
    String text = where(names) + body(names);
    char last = text.isEmpty() ? '.' : text.charAt(text.length() - 1);
    return Visible.words(".?!".indexOf(last) < 0 ? text + "." : text);
  }

  /** The words for a fault of another file inside a message: file, place and what was found. */
  public String quoted() {
    return where(SettingNames.LIBRARY) + found;
  }

  private String where(SettingNames names) {
    String at = place.words(names);
    String both = file + (file.isEmpty() || at.isEmpty() ? "" : ", ") + at;
    return both.isEmpty() ? "" : both + ": ";
  }

  private String body(SettingNames names) {
    StringBuilder body = new StringBuilder();
    Expected wanted = expected;
    if (wanted == null) {
      body.append(found);
    } else {
      body.append("found ").append(found).append("; expected ").append(wanted.words);
      String nearest = wanted.nearest;
      body.append(nearest == null ? "" : "; nearest is '" + nearest + "'");
    }
    String ways = remedy.text(names);
    return ways.isEmpty() ? body.toString() : body.append("; ").append(ways).toString();
  }
}
