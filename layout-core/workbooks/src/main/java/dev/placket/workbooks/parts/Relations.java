package dev.placket.workbooks.parts;

import dev.placket.packs.refusal.Refusal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The relations of a part.
 *
 * @param part the part, the empty name for the package
 * @param list in the order of the file
 */
public record Relations(String part, List<Relation> list) {
  /** Copies the list. */
  public Relations {
    list = List.copyOf(list);
  }

  /**
   * Reads them; none where the part has none.
   *
   * @throws Refusal if they are damaged
   */
  public static Relations of(Parts parts, String part) throws Refusal {
    String name = PartNames.relationsOf(part);
    return parts.has(name)
        ? of(PartLabel.of(parts, name), parts.bytes(name), parts.limits(), part)
        : new Relations(part, List.of());
  }

  /**
   * Reads the relations of a part from their bytes.
   *
   * @param what what messages call them
   * @throws Refusal if they are damaged
   */
  public static Relations of(PartLabel what, byte[] xml, WorkbookLimits limits, String part)
      throws Refusal {
    List<Relation> list = new ArrayList<>();
    XmlPart.walk(
        what,
        xml,
        limits,
        e -> {
          if (e.name().equals("Relationship")) {
            list.add(relation(part, e));
          }
        });
    return new Relations(part, list);
  }

  private static Relation relation(String part, XmlElement e) {
    String type = e.get("Type", "");
    String target = e.get("Target", "");
    boolean external = e.get("TargetMode", "").equals("External");
    return new Relation(
        e.get("Id", ""),
        type.substring(type.lastIndexOf('/') + 1),
        external ? target : PartNames.resolve(part, target),
        external);
  }

  /** The first of a type, null for none. */
  public @Nullable Relation first(String type) {
    return list.stream().filter(r -> r.type().equals(type)).findFirst().orElse(null);
  }

  /** The one of that id, null for none. */
  public @Nullable Relation get(@Nullable String id) {
    return list.stream().filter(r -> r.id().equals(id)).findFirst().orElse(null);
  }
}
