/** A program that uses the library as a module. */
module consumer {
  requires dev.placket.layout;
}
