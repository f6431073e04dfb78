package dev.placket.workbooks.write;

import dev.placket.packs.refusal.Refusal;
import dev.placket.workbooks.parts.PartLabel;
import dev.placket.workbooks.parts.PartNames;
import dev.placket.workbooks.parts.Parts;
import dev.placket.workbooks.parts.Relations;
import dev.placket.workbooks.parts.XmlText;
import dev.placket.workbooks.place.Anchored;
import dev.placket.workbooks.place.Fitted;
import dev.placket.workbooks.read.Workbook;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * The parts of a workbook that change when pictures are put in; whatever is not among them is
 * copied as it is.
 */
public final class WorkbookCopy {
  private static final String TYPES = "[Content_Types].xml";
  private static final String OWN_MEDIA = "placket-";

  private final Parts parts;
  private final Workbook workbook;
  private final Spellings spellings;
  private final Function<Anchored, String> description;
  private final Map<String, byte[]> changed = new TreeMap<>();
  private final Map<String, byte[]> added = new LinkedHashMap<>();
  private final Set<String> dropped = new LinkedHashSet<>();
  private final ContentTypesText types;

  private WorkbookCopy(Parts parts, Workbook workbook, Function<Anchored, String> description)
      throws Refusal {
    this.parts = parts;
    this.workbook = workbook;
    this.spellings = Spellings.of(workbook.strict());
    this.description = description;
    this.types = new ContentTypesText(text(TYPES));
  }

  /**
   * The bytes of the copy.
   *
   * @param description the alternative text of a picture
   * @throws Refusal if a part that has to change is damaged
   */
  public static byte[] bytes(
      Parts parts,
      Workbook workbook,
      List<Fitted> worksheets,
      Function<Anchored, String> description)
      throws Refusal {
    WorkbookCopy copy = new WorkbookCopy(parts, workbook, description);
    for (Fitted worksheet : worksheets) {
      copy.worksheet(worksheet);
    }
    copy.dropUnused();
    String types = copy.types.text();
    if (!types.equals(copy.text(TYPES))) {
      copy.change(TYPES, types);
    }
    return new ZipCopy(parts, copy.changed, copy.added, copy.dropped).bytes();
  }

  private void worksheet(Fitted fitted) throws Refusal {
    String sheet = fitted.worksheet().entry().part();
    String drawing = fitted.worksheet().drawing();
    String spelled = drawing == null ? null : parts.spelled(drawing);
    if (spelled == null) {
      spelled = newDrawing(sheet);
    }
    pictures(spelled, fitted.pictures());
  }

  private String newDrawing(String sheet) throws Refusal {
    String folder = base() + "drawings/";
    int n = 1;
    while (taken(folder + "drawing" + n + ".xml")) {
      n++;
    }
    String drawing = folder + "drawing" + n + ".xml";
    added.put(
        drawing,
        XmlText.of(PartLabel.of(parts, drawing), bytes(new AnchorXml(spellings).emptyDrawing()))
            .bytes());
    types.add(drawing, Spellings.DRAWING_TYPE);
    String relationsPart = PartNames.relationsOf(sheet);
    RelationsText relations = relations(relationsPart);
    String id = relations.add(spellings.relations() + "/drawing", target(sheet, drawing));
    change(relationsPart, relations.text());
    change(sheet, Splice.drawing(text(sheet), id, spellings.relations()));
    return drawing;
  }

  private void pictures(String drawing, List<Anchored> pictures) throws Refusal {
    String xml = DrawingText.withoutOwn(text(drawing));
    String relationsPart = PartNames.relationsOf(drawing);
    RelationsText relations = relations(relationsPart);
    String kept = xml;
    relations.remove(
        t -> t.substring(t.lastIndexOf('/') + 1).startsWith(OWN_MEDIA),
        id -> !DrawingText.uses(kept, id));
    AnchorXml anchors = new AnchorXml(spellings);
    int id = DrawingText.freeId(xml);
    Map<String, String> ids = new LinkedHashMap<>();
    StringBuilder all = new StringBuilder();
    for (Anchored picture : pictures) {
      String media = media(picture);
      String relation = ids.get(media);
      if (relation == null) {
        relation = relations.add(spellings.relations() + "/image", target(drawing, media));
        ids.put(media, relation);
      }
      all.append(anchors.picture(picture, id++, relation, description.apply(picture)));
    }
    change(drawing, Splice.append(xml, all.toString()));
    change(relationsPart, relations.text());
  }

  /** Stored once, whoever shows it: its name comes from its content. */
  private String media(Anchored picture) {
    byte[] content = picture.content();
    String name =
        base()
            + "media/"
            + OWN_MEDIA
            + digest(content).substring(0, 24)
            + (picture.jpeg() ? ".jpeg" : ".png");
    String spelled = parts.spelled(name);
    if (spelled != null) {
      return spelled;
    }
    added.put(name, content);
    types.add(name, picture.jpeg() ? "image/jpeg" : "image/png");
    return name;
  }

  /** Pictures of an earlier run that nothing shows any more. */
  private void dropUnused() throws Refusal {
    Set<String> shown = new LinkedHashSet<>();
    List<String> names = new ArrayList<>(parts.names());
    names.addAll(added.keySet());
    for (String name : names) {
      if (name.endsWith(".rels")) {
        String from = name.replace("_rels/", "").replaceAll("\\.rels$", "");
        byte[] now = whole(name).bytes();
        Relations.of(PartLabel.of(parts, name), now, parts.limits(), from)
            .list()
            .forEach(r -> shown.add(r.target()));
      }
    }
    parts.names().stream()
        .filter(n -> n.startsWith(base() + "media/" + OWN_MEDIA) && !shown.contains(n))
        .forEach(dropped::add);
  }

  private RelationsText relations(String part) throws Refusal {
    return exists(part) ? new RelationsText(text(part)) : RelationsText.empty();
  }

  /** A target within the folder of all parts is stated relative to its source. */
  private String target(String from, String to) {
    String folder = base();
    boolean near =
        from.startsWith(folder)
            && to.startsWith(folder)
            && from.substring(folder.length()).chars().filter(c -> c == '/').count() == 1;
    return near ? "../" + to.substring(folder.length()) : "/" + to;
  }

  private String base() {
    return workbook.part().substring(0, workbook.part().lastIndexOf('/') + 1);
  }

  /** A part that was lost may still have its type, and what takes its name would have it too. */
  private boolean taken(String part) {
    return exists(part) || exists(PartNames.relationsOf(part)) || types.names(part);
  }

  private boolean exists(String part) {
    return parts.has(part) || added.containsKey(part);
  }

  private String text(String part) throws Refusal {
    return whole(part).text();
  }

  private XmlText whole(String part) throws Refusal {
    byte[] now = changed.getOrDefault(String.valueOf(parts.spelled(part)), added.get(part));
    byte[] bytes = now == null ? parts.bytes(part) : now;
    return XmlText.of(PartLabel.of(parts, part), bytes);
  }

  private void change(String part, String text) throws Refusal {
    if (parts.has(part)) {
      changed.put(String.valueOf(parts.spelled(part)), whole(part).with(text).bytes());
    } else {
      added.put(part, bytes(text));
      if (part.endsWith(".rels")) {
        types.add(part, Spellings.RELATIONS_TYPE);
      }
    }
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static String digest(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
