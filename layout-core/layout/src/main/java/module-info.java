/**
 * Fits garment drawings onto the ruled sheets of a spec pack: sheets and flats in, placements and
 * densities out.
 */
module dev.placket.layout {
  requires static transitive org.jspecify;

  exports dev.placket.layout.callout;
  exports dev.placket.layout.check;
  exports dev.placket.layout.density;
  exports dev.placket.layout.fit;
  exports dev.placket.layout.flat;
  exports dev.placket.layout.plan;
  exports dev.placket.layout.sheet;
  exports dev.placket.layout.units;
}
