package dev.placket.packs.run;

import dev.placket.layout.sheet.Rule;
import dev.placket.packs.page.Inked;
import dev.placket.packs.page.PdfPack;
import dev.placket.packs.placed.CropFrame;
import dev.placket.packs.placed.PlacedFlat;
import dev.placket.packs.revision.Marked;
import dev.placket.packs.revision.Revised;
import dev.placket.packs.revision.RevisionMarks;
import dev.placket.packs.run.Composition.FittedPack;
import dev.placket.packs.run.Composition.FittedSheet;
import dev.placket.packs.text.Lettering;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The pages of a pack as they are drawn. What is the same however many pixels are embedded, frames
 * and marks, is found once.
 */
final class PackPages {
  private final FittedPack pack;
  private final Drawn drawn;
  private final Lettering lettering;
  private final List<Map<String, List<Rule>>> frames = new ArrayList<>();
  private final List<RevisionMarks.OnPage> marks = new ArrayList<>();

  /**
   * Pages of a pack.
   *
   * @param revised what is marked as changed; null for nothing
   */
  PackPages(FittedPack pack, Drawn drawn, Lettering lettering, @Nullable Revised revised) {
    this.pack = pack;
    this.drawn = drawn;
    this.lettering = lettering;
    for (FittedSheet sheet : pack.sheets()) {
      frames.add(CropFrame.on(sheet.page().sheet(), sheet.result().flats()));
    }
    for (int i = 0; i < pack.sheets().size(); i++) {
      marks.add(revised == null ? RevisionMarks.OnPage.NONE : marks(i, revised));
    }
  }

  private RevisionMarks.OnPage marks(int index, Revised revised) {
    FittedSheet sheet = pack.sheets().get(index);
    String id = sheet.result().id();
    List<PlacedFlat> flats = sheet.result().flats();
    return id == null
        ? RevisionMarks.OnPage.NONE
        : RevisionMarks.on(revised, id, sheet.page(), flats, inked(index, flats), lettering);
  }

  /** The ruled and lettered pages with the flats that lie on them. */
  List<PdfPack.Filled> of(List<List<PlacedFlat>> sheets) {
    List<PdfPack.Filled> pages = new ArrayList<>();
    for (int i = 0; i < sheets.size(); i++) {
      FittedSheet sheet = pack.sheets().get(i);
      pages.add(new PdfPack.Filled(sheet.page(), inked(i, sheets.get(i)), marks.get(i).marks()));
    }
    return pages;
  }

  private List<Inked> inked(int index, List<PlacedFlat> flats) {
    List<Inked> inked = new ArrayList<>();
    for (PlacedFlat flat : flats) {
      String id = flat.flat().id();
      boolean bar = pack.sheets().get(index).trueSize().contains(id);
      List<Rule> frame = frames.get(index).getOrDefault(id, List.of());
      inked.add(bar ? drawn.checked(flat, frame) : drawn.inked(flat, frame));
    }
    return inked;
  }

  /** Changes that have no mark, because there is no room for one beside them. */
  List<String> notes() {
    List<String> notes = new ArrayList<>();
    for (int i = 0; i < marks.size(); i++) {
      String sheet = pack.sheets().get(i).page().sheet().name();
      for (Marked missing : marks.get(i).missing()) {
        notes.add(
            "Revision mark: no room beside "
                + missing.called()
                + " on sheet "
                + sheet
                + "; the list of changes names it.");
      }
    }
    return notes;
  }
}
