/** Reads folders and descriptions of flats, and writes packs. */
module dev.placket.packs {
  requires static transitive org.jspecify;
  requires transitive dev.placket.pictures;
  requires com.fasterxml.jackson.core;
  requires org.yaml.snakeyaml;
  requires org.apache.pdfbox;
  requires org.apache.fontbox;
  requires org.apache.pdfbox.io;
  requires de.rototor.pdfbox.graphics2d;

  exports dev.placket.packs.callouts;
  exports dev.placket.packs.compose;
  exports dev.placket.packs.description;
  exports dev.placket.packs.dimensions;
  exports dev.placket.packs.flats;
  exports dev.placket.packs.folder;
  exports dev.placket.packs.history;
  exports dev.placket.packs.issue;
  exports dev.placket.packs.json;
  exports dev.placket.packs.language;
  exports dev.placket.packs.measure;
  exports dev.placket.packs.output;
  exports dev.placket.packs.page;
  exports dev.placket.packs.placed;
  exports dev.placket.packs.refusal;
  exports dev.placket.packs.report;
  exports dev.placket.packs.revision;
  exports dev.placket.packs.run;
  exports dev.placket.packs.sample;
  exports dev.placket.packs.text;
}
