package dev.placket.packs.folder;

import dev.placket.layout.flat.InkedBox;
import dev.placket.packs.flats.RoleWords;
import dev.placket.pictures.PictureFile;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PicturePart;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Decides which drawings of a file are flats of their own. */
final class FileParts {
  /** Boxes that share less of the smaller one stand apart: an outline may touch another's. */
  private static final double SHARED = 0.01;

  private FileParts() {}

  /**
   * Every page of a PDF; of an SVG its views, or the drawings inside it, if there are two or more.
   * Groups are flats where two or more say a role and all stand apart; else they are parts of one
   * drawing, such as its front panel and its back panel.
   *
   * @throws PictureException if a group cannot be read
   */
  static List<PicturePart> of(PictureFile file) throws PictureException {
    List<PicturePart> parts = file.parts();
    if (parts.isEmpty()) {
      return List.of(PicturePart.WHOLE);
    }
    boolean apart =
        switch (parts.get(0).kind()) {
          case WHOLE, PAGE -> true;
          case VIEW, DRAWING -> parts.size() > 1;
          case GROUP -> !file.hasLooseContent() && standApart(file, parts);
        };
    return apart ? parts : List.of(PicturePart.WHOLE);
  }

  private static boolean standApart(PictureFile file, List<PicturePart> parts)
      throws PictureException {
    long worded = parts.stream().filter(p -> RoleWords.read(p.called()).worded()).count();
    if (worded < 2) {
      return false;
    }
    List<InkedBox> boxes = new ArrayList<>();
    for (PicturePart part : parts) {
      InkedBox box = file.read(part, false, Set.of()).inkedBox();
      if (boxes.stream().anyMatch(other -> overlap(box, other))) {
        return false;
      }
      boxes.add(box);
    }
    return true;
  }

  private static boolean overlap(InkedBox a, InkedBox b) {
    double width = Math.min(a.right(), b.right()) - Math.max(a.left(), b.left());
    double height = Math.min(a.bottom(), b.bottom()) - Math.max(a.top(), b.top());
    double smaller = Math.min(a.width() * a.height(), b.width() * b.height());
    return width > 0 && height > 0 && width * height > SHARED * smaller;
  }
}
