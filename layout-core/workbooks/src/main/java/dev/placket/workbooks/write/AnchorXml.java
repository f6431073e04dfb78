package dev.placket.workbooks.write;

import dev.placket.packs.placed.SwatchFrame;
import dev.placket.packs.text.Xml;
import dev.placket.workbooks.geometry.Emu;
import dev.placket.workbooks.place.Anchored;
import dev.placket.workbooks.read.DrawnThing;

/** The XML of a picture with a one-cell anchor (ISO/IEC 29500-1, 20.5.2.24). */
final class AnchorXml {
  /** A hairline inside the edge (20.1.2.2.24), so that it reaches no cell beside the picture. */
  private static final String FRAME =
      "<a:ln w=\""
          + Math.round(SwatchFrame.LINE.pt() * Emu.PER_POINT)
          + "\" algn=\"in\"><a:solidFill><a:srgbClr val=\"000000\"/></a:solidFill>"
          + "<a:miter lim=\"800000\"/></a:ln>";

  private final Spellings spellings;

  AnchorXml(Spellings spellings) {
    this.spellings = spellings;
  }

  /** An empty drawing part; its root takes anchors. */
  String emptyDrawing() {
    return "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n<xdr:wsDr xmlns:xdr=\""
        + spellings.drawing()
        + "\" xmlns:a=\""
        + spellings.art()
        + "\"></xdr:wsDr>";
  }

  /**
   * One picture; it declares its prefixes itself, so any drawing part can take it.
   *
   * @param id its number, unique in the drawing
   * @param relation the relation to its media part
   * @param description its alternative text
   */
  String picture(Anchored picture, int id, String relation, String description) {
    DrawnThing.Spot at = picture.at();
    String extent = "cx=\"" + picture.width() + "\" cy=\"" + picture.height() + "\"";
    return "<xdr:oneCellAnchor xmlns:xdr=\""
        + spellings.drawing()
        + "\" xmlns:a=\""
        + spellings.art()
        + "\" xmlns:r=\""
        + spellings.relations()
        + "\"><xdr:from><xdr:col>"
        + at.column()
        + "</xdr:col><xdr:colOff>"
        + at.across()
        + "</xdr:colOff><xdr:row>"
        + at.row()
        + "</xdr:row><xdr:rowOff>"
        + at.down()
        + "</xdr:rowOff></xdr:from><xdr:ext "
        + extent
        + "/><xdr:pic><xdr:nvPicPr><xdr:cNvPr id=\""
        + id
        + "\" name=\""
        + Xml.escaped(picture.name())
        + "\" descr=\""
        + Xml.escaped(description)
        + "\"/><xdr:cNvPicPr><a:picLocks noChangeAspect=\"1\"/></xdr:cNvPicPr></xdr:nvPicPr>"
        + "<xdr:blipFill><a:blip r:embed=\""
        + relation
        + "\"/><a:stretch><a:fillRect/></a:stretch></xdr:blipFill><xdr:spPr><a:xfrm>"
        + "<a:off x=\"0\" y=\"0\"/><a:ext "
        + extent
        + "/></a:xfrm><a:prstGeom prst=\"rect\"><a:avLst/></a:prstGeom>"
        + (picture.framed() ? FRAME : "")
        + "</xdr:spPr></xdr:pic>"
        + "<xdr:clientData/></xdr:oneCellAnchor>";
  }
}
