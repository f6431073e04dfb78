package dev.placket.demo.prepare;

import dev.placket.layout.units.Length;
import dev.placket.packs.flats.Reading;
import dev.placket.packs.output.OutputName;
import dev.placket.pictures.Picture;
import dev.placket.pictures.PictureFile;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.RasterPicture;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PicturePart;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.prepare.Clearing;
import dev.placket.pictures.prepare.PngWriter;
import dev.placket.pictures.prepare.ReadyPicture;
import dev.placket.pictures.prepare.ToPrint;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One picture to make ready.
 *
 * @param file where it is
 * @param part which drawing of the file it is, as behind the sign in {@code style.pdf#3}; null for
 *     all
 * @param layers the layers to show; empty for those that the file shows
 * @param filled whether the pack fills its areas with colours; the copy is as drawn
 * @param prefix what its copy's name begins with
 * @param longest the printed length of the longer side of its ink, or of all of it
 * @param density the most pixels per printed inch
 * @param clearing what becomes of its ground
 * @param whole whether it is printed with its ground, not its ink alone
 * @param fewColours whether colours may be exchanged where that is not seen
 * @param digest the SHA-256 that its bytes must have; null for any
 * @param reading how it is read
 */
record Job(
    Path file,
    @Nullable String part,
    List<String> layers,
    boolean filled,
    String prefix,
    Length longest,
    double density,
    Clearing clearing,
    boolean whole,
    boolean fewColours,
    @Nullable String digest,
    Reading reading) {
  /** The picture as this asks for it: the whole of one that keeps its ground by its name. */
  ToPrint of(Picture picture) throws PictureException {
    if (whole) {
      return ToPrint.whole(picture, longest);
    }
    // A sheet was laid out with the ground, so that the place it gives is for all of the picture.
    boolean cut = clearing == Clearing.ANY_COLOUR && digest == null;
    return cut && picture instanceof RasterPicture raster
        ? ToPrint.offColour(raster, longest)
        : ToPrint.ink(picture, longest, clearing);
  }

  /** Writes the copy; true if colours were exchanged for fewer. */
  boolean write(ReadyPicture ready, OutputStream out) throws PictureException, IOException {
    if (fewColours) {
      return PngWriter.writeFewColours(ready.rows(), ready.stated(), out);
    }
    PngWriter.write(ready.rows(), ready.stated(), out);
    return false;
  }

  /** Bytes of the copy. */
  long weight(ReadyPicture ready) throws PictureException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      write(ready, bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.size();
  }

  /** What it is called in reports: its file, with the part as in {@code style.pdf#3}. */
  String name() {
    String name = file.getFileName().toString();
    return part == null ? name : name + "#" + part;
  }

  /** The name of the ready copy. */
  String output() {
    String name = file.getFileName().toString();
    int dot = name.lastIndexOf('.');
    String stem = prefix + (dot > 0 ? name.substring(0, dot) : name);
    List<String> all = new ArrayList<>(List.of(stem));
    Stream.ofNullable(part).forEach(all::add);
    all.addAll(layers);
    return OutputName.kept(String.join("-", all), "picture") + ".png";
  }

  /** Its picture. */
  Picture read() throws PictureException {
    if (part == null && layers.isEmpty()) {
      return PictureReader.read(PictureSource.of(file), reading.limits(), reading.typefaces());
    }
    PictureFile all = reading.open(PictureSource.of(file));
    PicturePart its = part == null ? all.whole() : all.part(part);
    return all.read(its, false, Set.copyOf(layers));
  }

  /** The same with the name of its folder before that of its copy. */
  Job withFolder() {
    Path folder = file.toAbsolutePath().getParent();
    Path name = folder == null ? null : folder.getFileName();
    String before = name == null ? "" : name + "-";
    return new Job(
        file,
        part,
        layers,
        filled,
        before,
        longest,
        density,
        clearing,
        whole,
        fewColours,
        digest,
        reading);
  }

  /** One job for two places of the picture, at the larger size. */
  static Job larger(Job a, Job b) {
    Job larger = b.longest.pt() > a.longest.pt() ? b : a;
    return a.filled == b.filled ? larger : larger.asFilled();
  }

  private Job asFilled() {
    return new Job(
        file,
        part,
        layers,
        true,
        prefix,
        longest,
        density,
        clearing,
        whole,
        fewColours,
        digest,
        reading);
  }

  Job with(Reading others) {
    return new Job(
        file,
        part,
        layers,
        filled,
        prefix,
        longest,
        density,
        clearing,
        whole,
        fewColours,
        digest,
        others);
  }

  Job at(double other) {
    return new Job(
        file,
        part,
        layers,
        filled,
        prefix,
        longest,
        other,
        clearing,
        whole,
        fewColours,
        digest,
        reading);
  }
}
