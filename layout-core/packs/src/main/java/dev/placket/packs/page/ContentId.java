package dev.placket.packs.page;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Set;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;

/**
 * The number that a document's id grows from: pages with the same content share it, and no two
 * others do. A clock would make every run another file.
 */
final class ContentId {
  private final MessageDigest digest;
  private final Set<COSStream> seen = Collections.newSetFromMap(new IdentityHashMap<>());

  private ContentId(MessageDigest digest) {
    this.digest = digest;
  }

  /**
   * Digests the pages, their drawings and their pictures.
   *
   * @param title of the document, which the file holds too
   */
  static long of(PDDocument document, String title) throws IOException {
    try {
      ContentId id = new ContentId(MessageDigest.getInstance("SHA-256"));
      id.digest.update(title.getBytes(StandardCharsets.UTF_8));
      for (PDPage page : document.getPages()) {
        try (InputStream in = page.getContents()) {
          id.add(in);
        }
        id.add(page.getResources());
      }
      return ByteBuffer.wrap(id.digest.digest()).getLong();
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  private void add(PDResources resources) throws IOException {
    for (COSName name : resources.getXObjectNames()) {
      PDXObject object = resources.getXObject(name);
      if (!seen.add(object.getCOSObject())) {
        continue;
      }
      try (InputStream in = object.getCOSObject().createRawInputStream()) {
        add(in);
      }
      if (object instanceof PDFormXObject form && form.getResources() != null) {
        addStates(form.getResources());
        add(form.getResources());
      }
    }
  }

  /** How groups meet what is under them stands beside their streams, and their masks too. */
  private void addStates(PDResources resources) throws IOException {
    for (COSName name : resources.getExtGStateNames()) {
      COSDictionary state = resources.getExtGState(name).getCOSObject();
      String said = state.getFloat(COSName.CA_NS, 1) + " " + state.getCOSName(COSName.BM);
      digest.update(said.getBytes(StandardCharsets.UTF_8));
      COSDictionary mask = state.getCOSDictionary(COSName.SMASK);
      COSStream form = mask == null ? null : mask.getCOSStream(COSName.G);
      if (form != null) {
        try (InputStream in = form.createRawInputStream()) {
          add(in);
        }
      }
    }
  }

  private void add(InputStream in) throws IOException {
    try (DigestInputStream through = new DigestInputStream(in, digest)) {
      through.transferTo(java.io.OutputStream.nullOutputStream());
    }
  }
}
