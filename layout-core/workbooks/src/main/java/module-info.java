/** Places flats on the worksheets of a workbook and writes a copy. */
module dev.placket.workbooks {
  requires static transitive org.jspecify;
  requires transitive dev.placket.packs;
  requires com.fasterxml.jackson.core;
  requires java.xml;
  requires org.dhatim.fastexcel;

  exports dev.placket.workbooks.form;
  exports dev.placket.workbooks.parts;
  exports dev.placket.workbooks.place;
  exports dev.placket.workbooks.refusal;
  exports dev.placket.workbooks.run;
}
