package dev.placket.layout.image;

/**
 * Rows of a picture that states no alpha but has room for it. Where the same stands there for all
 * pixels, nothing or all, it means nothing; where it varies, some programs mean alpha by it and
 * others do not, so that is refused.
 */
record OpaqueRows(String name, RowReader rows) implements RowReader {
  @Override
  public int width() {
    return rows.width();
  }

  @Override
  public int height() {
    return rows.height();
  }

  @Override
  public void next(int[] row) throws PictureException {
    rows.next(row);
    for (int x = 0; x < rows.width(); x++) {
      int spare = row[x] >>> 24;
      if (spare != 0 && spare != 255) {
        throw BmpKind.refused(name, "whose fourth bytes may be alpha or not");
      }
      row[x] |= 0xFF000000;
    }
  }

  @Override
  public void close() {
    rows.close();
  }
}
