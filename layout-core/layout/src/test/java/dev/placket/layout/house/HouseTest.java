package dev.placket.layout.house;

import static com.tngtech.archunit.lang.conditions.ArchConditions.be;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import dev.placket.house.CycleRules;
import dev.placket.house.ExplainedRules;
import dev.placket.house.Library;
import dev.placket.house.PurityRules;
import dev.placket.layout.check.Referee;
import dev.placket.layout.fit.ConflictText;
import dev.placket.layout.fit.ExactBox;
import dev.placket.layout.fit.Fitter;
import dev.placket.layout.fit.FurtherSheets;
import dev.placket.layout.fit.PlacedBoxes;
import dev.placket.layout.flat.Targets;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** The solver's module: {@code units ← sheet ← flat ← fit}, {@code units ← density}. */
class HouseTest {
  private static final Library LIBRARY = Library.of("dev.placket.layout", Referee.class);

  @Nested
  class Packages extends CycleRules {
    @Override
    protected Library library() {
      return LIBRARY;
    }

    @Override
    protected Map<String, Set<String>> mayUse() {
      return Map.of(
          "units", Set.of(),
          "sheet", Set.of("units"),
          "flat", Set.of("units", "sheet"),
          "fit", Set.of("units", "sheet", "flat"),
          "density", Set.of("units"),
          "check", Set.of("units", "sheet", "flat", "fit"),
          "plan", Set.of("sheet", "fit", "check"));
    }
  }

  @Nested
  class Explained extends ExplainedRules {
    @Override
    protected Library library() {
      return LIBRARY;
    }
  }

  @Nested
  class Pure extends PurityRules {
    @Override
    protected Library library() {
      return LIBRARY;
    }
  }

  @Test
  void knowsNoPicturesAndNoFiles() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideOutsideOfPackages(
            "dev.placket.layout..",
            "java.lang..",
            "java.math..",
            "java.util..",
            "org.jspecify.annotations..")
        .check(LIBRARY.classes());
  }

  @Test
  void theRefereeUsesValuesAndNothingThatWorksThemOut() {
    noClasses()
        .that()
        .resideInAPackage("dev.placket.layout.check..")
        .should()
        .dependOnClassesThat()
        .belongToAnyOf(Fitter.class, Targets.class, PlacedBoxes.class, ExactBox.class)
        .check(LIBRARY.classes());
  }

  @Test
  void theSearchIsNotExported() {
    // What the fit package shows is values and the ways in.
    classes()
        .that()
        .resideInAPackage("dev.placket.layout.fit..")
        .and()
        .arePublic()
        .should(
            be(
                DescribedPredicate.describe(
                    "a record, an enum, an interface, or one of the ways in",
                    (JavaClass c) ->
                        c.isRecord()
                            || c.isEnum()
                            || c.isInterface()
                            || c.isEquivalentTo(Fitter.class)
                            || c.isEquivalentTo(FurtherSheets.class)
                            || c.isEquivalentTo(ConflictText.class)
                            || c.isEquivalentTo(PlacedBoxes.class))))
        .check(LIBRARY.classes());
  }
}
