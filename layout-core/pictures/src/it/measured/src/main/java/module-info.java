/** A program that measures pictures and solves a sheet. */
module consumer {
  requires dev.placket.pictures;
}
