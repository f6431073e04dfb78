package dev.placket.workbooks.read;

import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.fault.Fault;
import dev.placket.workbooks.parts.Parts;
import dev.placket.workbooks.parts.Relation;
import dev.placket.workbooks.parts.Relations;
import dev.placket.workbooks.parts.Visitor;
import dev.placket.workbooks.parts.XmlElement;
import dev.placket.workbooks.parts.XmlPart;
import dev.placket.workbooks.refusal.WorkbookSetting;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads what a workbook holds, and how its cells look. */
public final class WorkbookReader implements Visitor {
  private static final String STRICT = "http://purl.oclc.org/ooxml/spreadsheetml/main";
  private static final String TRANSITIONAL =
      "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

  private final Parts parts;
  private final Relations relations;
  private final List<Workbook.Entry> worksheets = new ArrayList<>();
  private final List<Workbook.DefinedName> names = new ArrayList<>();
  private boolean strict;
  private int sheets;
  private @Nullable String name;
  private int nameIndex;
  private final StringBuilder text = new StringBuilder();

  private WorkbookReader(Parts parts, Relations relations) {
    this.parts = parts;
    this.relations = relations;
  }

  /**
   * Reads the main part and the styles.
   *
   * @throws Refusal if the package holds no workbook, or it is damaged or beyond the limits
   */
  public static Workbook read(Parts parts) throws Refusal {
    Relation main = Relations.of(parts, "").first("officeDocument");
    if (main == null || !parts.has("[Content_Types].xml") || !parts.has(main.target())) {
      throw PackageKind.refusal(parts);
    }
    if (main.target().endsWith(".bin")) {
      throw PackageKind.binary(parts);
    }
    WorkbookReader reader = new WorkbookReader(parts, Relations.of(parts, main.target()));
    XmlPart.walk(parts, main.target(), reader);
    Relation styles = reader.relations.first("styles");
    Relation strings = reader.relations.first("sharedStrings");
    return new Workbook(
        main.target(),
        reader.strict,
        styles == null ? CellStyles.NONE : StylesReader.read(parts, styles.target()),
        strings == null ? "" : strings.target(),
        reader.worksheets,
        reader.names);
  }

  @Override
  public void start(XmlElement e) throws Refusal {
    if (e.depth() == 0) {
      strict = e.namespace().equals(STRICT);
      if (!e.name().equals("workbook") || !(strict || e.namespace().equals(TRANSITIONAL))) {
        throw PackageKind.refusal(parts, e.name());
      }
    } else if (e.name().equals("sheet") && e.depth() == 2) {
      worksheet(e);
    } else if (e.name().equals("definedName")) {
      name = e.get("name", "");
      nameIndex = e.whole("localSheetId", -1);
      text.setLength(0);
    }
  }

  @Override
  public void text(String more) {
    if (name != null) {
      text.append(more);
    }
  }

  @Override
  public void end(String ended) {
    if (ended.equals("definedName") && name != null) {
      names.add(new Workbook.DefinedName(name, nameIndex, text.toString().strip()));
      name = null;
    }
  }

  private void worksheet(XmlElement e) throws Refusal {
    Relation relation = relations.get(e.relation("id"));
    int index = sheets++;
    if (relation == null || !relation.type().equals("worksheet")) {
      return;
    }
    if (worksheets.size() == parts.limits().worksheets()) {
      throw Refusal.input(
          Fault.limit(
                  parts.file(),
                  "has more than " + parts.limits().worksheets() + " worksheets, the limit")
              .remedy("raise it", WorkbookSetting.MAXIMUM_WORKSHEETS));
    }
    boolean hidden = !e.get("state", "visible").equals("visible");
    worksheets.add(new Workbook.Entry(e.get("name", ""), relation.target(), index, hidden));
  }
}
