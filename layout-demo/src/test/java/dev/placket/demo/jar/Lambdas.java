package dev.placket.demo.jar;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.DoubleBinaryOperator;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.function.IntFunction;
import java.util.function.IntToDoubleFunction;
import java.util.function.IntToLongFunction;
import java.util.function.LongFunction;
import java.util.function.LongToDoubleFunction;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;
import java.util.function.ToLongFunction;

/** Lambdas of every kind that is linked in a way of its own; says what each gives. */
public final class Lambdas implements Supplier<List<String>> {
  private final List<String> said = new ArrayList<>();
  private final int seven = 7;

  /** What may be held by a variable and be written out. */
  private interface Kept extends Supplier<String>, Serializable {}

  private interface ToFloat<T> {
    float of(T thing);
  }

  private interface LongToFloat {
    float of(long number);
  }

  private interface Greeting {
    private String hidden(String name) {
      return "hello " + name;
    }

    default Function<String, String> greets() {
      return this::hidden;
    }
  }

  private record Pair(int left, String right) {}

  /** In the nest of its outer class, with a private method of the same name as there. */
  private static class Inner {
    private String own(int i) {
      return "inner " + i;
    }

    IntFunction<String> asReference() {
      return this::own;
    }
  }

  private static final class Further extends Inner {
    private String own(int i) {
      return "further " + i;
    }

    IntFunction<String> asFurther() {
      return this::own;
    }
  }

  private String own(int i) {
    return "own " + (i + seven);
  }

  private static double third(long of) {
    return of / 3.0;
  }

  private static double half(int of) {
    return of / 2.0;
  }

  @Override
  public List<String> get() {
    captures((byte) 1, 'c', 2L, 3.5f, 4.5, true, "s");
    references();
    conversions();
    nests();
    return said;
  }

  private void captures(byte b, char c, long l, float f, double d, boolean t, String s) {
    Supplier<String> all = () -> "" + b + c + l + f + d + t + s + seven;
    say(all.get());
    Runnable runs = () -> say("nothing to capture but this");
    runs.run();
    Supplier<String> none = () -> "none";
    say(none.get());
    Kept kept = () -> "kept " + s;
    say(kept.get());
  }

  private void references() {
    IntFunction<String> mine = this::own;
    say(mine.apply(1));
    BiFunction<Integer, String, Pair> made = Pair::new;
    say(made.apply(3, "right").toString());
    Function<Pair, String> right = Pair::right;
    say(right.apply(new Pair(1, "r")));
    IntFunction<int[]> array = int[]::new;
    say("" + array.apply(3).length);
    Consumer<String> dropped = said::add;
    dropped.accept("its result is dropped");
    Function<String, Integer> length = String::length;
    say("" + length.apply("four"));
    Comparator<String> natural = Comparator.comparing(String::length);
    say("" + natural.thenComparing(Comparator.reverseOrder()).compare("a", "b"));
    Predicate<Object> is = "x"::equals;
    say("" + is.test("x") + is.test(1));
    Function<Object[], List<Object>> many = List::of;
    say("" + many.apply(new Object[] {1, 2}));
  }

  private void conversions() {
    IntToDoubleFunction halves = Lambdas::half;
    say("" + halves.applyAsDouble(3));
    Function<Integer, Double> boxed = Lambdas::half;
    say("" + boxed.apply(5));
    ToDoubleFunction<Pair> widened = Pair::left;
    say("" + widened.applyAsDouble(new Pair(9, "")));
    ToLongFunction<String> longer = String::length;
    say("" + longer.applyAsLong("longer"));
    IntToLongFunction absolute = Math::abs;
    say("" + absolute.applyAsLong(-3));
    LongToDoubleFunction real = l -> l;
    say("" + real.applyAsDouble(1L << 40));
    ToIntFunction<Character> code = Character::charValue;
    say("" + code.applyAsInt('A'));
    Function<Integer, Object> object = i -> i + 1;
    say("" + object.apply(1));
    ToDoubleFunction<Integer> unboxedAndWidened = Lambdas::third;
    say("" + unboxedAndWidened.applyAsDouble(4));
    IntConsumer dropsTwoWords = Lambdas::half;
    dropsTwoWords.accept(1);
    LongFunction<Object> boxedWide = Lambdas::third;
    say("" + boxedWide.apply(5));
    IntToDoubleFunction unboxesItsResult = List.of(0.25, 0.75)::get;
    say("" + unboxesItsResult.applyAsDouble(1));
    LongToDoubleFunction longToDouble = Math::abs;
    say("" + longToDouble.applyAsDouble(-(1L << 53)));
    DoubleBinaryOperator twoWide = Math::atan2;
    say("" + twoWide.applyAsDouble(0.5, 8));
    ToFloat<String> intToFloat = String::length;
    say("" + intToFloat.of("five "));
    LongToFloat longToFloat = Math::abs;
    say("" + longToFloat.of(-(1L << 40)));
    ToDoubleFunction<Float> floatToDouble = Float::floatValue;
    say("" + floatToDouble.applyAsDouble(0.1f));
    List<? extends Number> numbers = List.of(1, 2.5);
    say("" + numbers.stream().mapToDouble(Number::doubleValue).sum());
  }

  private void nests() {
    Further further = new Further();
    say(further.asReference().apply(1) + ", " + further.asFurther().apply(1));
    Greeting greeting = new Greeting() {};
    say(greeting.greets().apply("nest"));
    Supplier<Supplier<String>> deep = () -> () -> own(seven);
    say(deep.get().get());
  }

  private void say(String what) {
    said.add(what);
  }
}
