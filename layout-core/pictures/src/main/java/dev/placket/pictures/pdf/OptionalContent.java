package dev.placket.pictures.pdf;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.jspecify.annotations.Nullable;

/**
 * Which layers of a PDF are shown (ISO 32000-1, 8.11): those of its default configuration, or those
 * that are named.
 */
final class OptionalContent {
  private static final COSName OCGS = COSName.OCGS;
  private static final COSName MEMBERSHIP = COSName.getPDFName("OCMD");
  private static final COSName EXPRESSION = COSName.getPDFName("VE");
  private static final int DEEPEST = 32;

  private final List<COSDictionary> groups;
  private final Set<COSDictionary> hidden;

  private OptionalContent(List<COSDictionary> groups, Set<COSDictionary> hidden) {
    this.groups = groups;
    this.hidden = hidden;
  }

  /** The default configuration of a document. */
  static OptionalContent of(COSDictionary catalog) {
    COSDictionary properties = catalog.getCOSDictionary(COSName.OCPROPERTIES);
    List<COSDictionary> groups = dictionaries(properties, OCGS);
    Set<COSDictionary> hidden = identitySet();
    COSDictionary usual = properties == null ? null : properties.getCOSDictionary(COSName.D);
    if (usual != null && COSName.OFF.equals(usual.getCOSName(COSName.BASE_STATE))) {
      hidden.addAll(groups);
    }
    hidden.removeAll(setOf(dictionaries(usual, COSName.ON)));
    hidden.addAll(dictionaries(usual, COSName.OFF));
    return new OptionalContent(groups, hidden);
  }

  /** The same document with just these layers shown. */
  OptionalContent showing(Set<String> names) {
    Set<COSDictionary> others = identitySet();
    groups.stream().filter(g -> !names.contains(name(g))).forEach(others::add);
    return new OptionalContent(groups, others);
  }

  /** The names of all layers, in the order of the file. */
  List<String> names() {
    return groups.stream().map(OptionalContent::name).distinct().toList();
  }

  /** The names of the layers that are not shown. */
  Set<String> hiddenNames() {
    Set<String> names = new TreeSet<>();
    groups.stream().filter(hidden::contains).map(OptionalContent::name).forEach(names::add);
    return names;
  }

  /** Whether what belongs to a group or to a membership dictionary is left out. */
  boolean hides(@Nullable COSBase content) {
    if (!(content instanceof COSDictionary dictionary)) {
      return false;
    }
    if (!MEMBERSHIP.equals(dictionary.getCOSName(COSName.TYPE))) {
      return hidden.contains(dictionary);
    }
    COSArray expression = dictionary.getCOSArray(EXPRESSION);
    return expression == null ? hidesByPolicy(dictionary) : !shown(expression, 0);
  }

  private boolean hidesByPolicy(COSDictionary membership) {
    List<COSDictionary> its = dictionaries(membership, OCGS);
    COSDictionary one = membership.getCOSDictionary(OCGS);
    if (one != null) {
      its = List.of(one);
    }
    if (its.isEmpty()) {
      return false;
    }
    String policy = membership.getNameAsString(COSName.P, "AnyOn");
    boolean shown =
        switch (policy) {
          case "AllOn" -> its.stream().noneMatch(hidden::contains);
          case "AnyOff" -> its.stream().anyMatch(hidden::contains);
          case "AllOff" -> its.stream().allMatch(hidden::contains);
          default -> !its.stream().allMatch(hidden::contains);
        };
    return !shown;
  }

  /** A visibility expression: a group, or an array of And, Or or Not and what it joins. */
  private boolean shown(@Nullable COSBase expression, int depth) {
    if (!(expression instanceof COSArray array) || depth > DEEPEST) {
      return !hides(expression instanceof COSDictionary ? expression : null);
    }
    List<Boolean> parts = new ArrayList<>();
    for (int i = 1; i < array.size(); i++) {
      parts.add(shown(array.getObject(i), depth + 1));
    }
    return switch (array.size() == 0 ? "" : String.valueOf(array.getName(0))) {
      case "And" -> !parts.contains(false);
      case "Or" -> parts.contains(true);
      case "Not" -> !parts.contains(true);
      default -> true;
    };
  }

  private static String name(COSDictionary group) {
    return String.valueOf(group.getString(COSName.NAME, ""));
  }

  private static List<COSDictionary> dictionaries(@Nullable COSDictionary of, COSName key) {
    COSArray array = of == null ? null : of.getCOSArray(key);
    List<COSDictionary> all = new ArrayList<>();
    for (int i = 0; array != null && i < array.size(); i++) {
      if (array.getObject(i) instanceof COSDictionary dictionary) {
        all.add(dictionary);
      }
    }
    return all;
  }

  private static Set<COSDictionary> identitySet() {
    return Collections.newSetFromMap(new IdentityHashMap<>());
  }

  private static Set<COSDictionary> setOf(List<COSDictionary> all) {
    Set<COSDictionary> set = identitySet();
    set.addAll(all);
    return set;
  }
}
