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
import dev.placket.house.SpeechRules;
import dev.placket.layout.check.Referee;
import dev.placket.layout.fit.ConflictText;
import dev.placket.layout.fit.ExactBox;
import dev.placket.layout.fit.PlacedBoxes;
import dev.placket.layout.flat.Targets;
import dev.placket.layout.solve.Fitter;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** The solver's module: {@code units ← sheet ← flat ← fit ← solve ← plan}. */
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
      return Map.ofEntries(
          Map.entry("units", Set.of()),
          Map.entry("sheet", Set.of("units")),
          Map.entry("flat", Set.of("units", "sheet")),
          Map.entry("fit", Set.of("units", "sheet", "flat")),
          Map.entry("density", Set.of("units")),
          Map.entry("callout", Set.of("units")),
          Map.entry("check", Set.of("units", "sheet", "flat", "fit")),
          Map.entry("solve.model", Set.of("units", "sheet", "flat", "fit")),
          Map.entry("solve.stretch", Set.of("solve.model")),
          Map.entry("solve.search", Set.of("flat", "solve.model", "solve.stretch")),
          Map.entry(
              "solve.finish",
              Set.of("units", "sheet", "flat", "fit", "solve.model", "solve.stretch")),
          Map.entry(
              "solve.order",
              Set.of(
                  "units",
                  "flat",
                  "fit",
                  "solve.model",
                  "solve.stretch",
                  "solve.search",
                  "solve.finish")),
          Map.entry(
              "solve.levels", Set.of("flat", "fit", "solve.model", "solve.search", "solve.finish")),
          Map.entry("solve.look", Set.of("units", "sheet", "flat", "fit")),
          Map.entry("solve.conflict", Set.of("units", "sheet", "flat", "fit")),
          Map.entry(
              "solve",
              Set.of(
                  "sheet",
                  "flat",
                  "fit",
                  "solve.model",
                  "solve.search",
                  "solve.finish",
                  "solve.order",
                  "solve.levels",
                  "solve.look",
                  "solve.conflict")),
          Map.entry("plan", Set.of("sheet", "flat", "fit", "solve", "check")));
    }
  }

  @Nested
  class Speech extends SpeechRules {
    @Override
    protected Library library() {
      return LIBRARY;
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
        .belongToAnyOf(Targets.class, PlacedBoxes.class, ExactBox.class)
        .check(LIBRARY.classes());
    noClasses()
        .that()
        .resideInAPackage("dev.placket.layout.check..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage(Fitter.class.getPackageName() + "..")
        .check(LIBRARY.classes());
  }

  @Test
  void theValuesOfAFitSolveNothing() {
    classes()
        .that()
        .resideInAPackage("dev.placket.layout.fit..")
        .and()
        .arePublic()
        .should(
            be(
                DescribedPredicate.describe(
                    "a record, an enum, an interface, or what follows from them",
                    (JavaClass c) ->
                        c.isRecord()
                            || c.isEnum()
                            || c.isInterface()
                            || c.isEquivalentTo(ConflictText.class)
                            || c.isEquivalentTo(PlacedBoxes.class))))
        .check(LIBRARY.classes());
  }
}
