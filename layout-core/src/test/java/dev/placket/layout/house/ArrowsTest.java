package dev.placket.layout.house;

import static com.tngtech.archunit.base.DescribedPredicate.alwaysFalse;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.equivalentTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.conditions.ArchConditions.be;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaPackage;
import dev.placket.layout.fit.ConflictText;
import dev.placket.layout.fit.ExactBox;
import dev.placket.layout.fit.Fitter;
import dev.placket.layout.fit.FurtherSheets;
import dev.placket.layout.fit.PlacedBoxes;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Targets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The arrows between the packages of the library: {@code units ← sheet ← flat ← fit ← callout},
 * {@code units ← density ← image}, {@code check → sheet, flat, fit}. Besides, image may hand out
 * the inked box that it measures for a flat.
 */
class ArrowsTest {
  private static final Map<String, List<String>> MAY_USE =
      Map.of(
          "units", List.of(),
          "sheet", List.of("units"),
          "flat", List.of("units", "sheet"),
          "fit", List.of("units", "sheet", "flat"),
          "callout", List.of("units", "sheet", "flat", "fit"),
          "density", List.of("units"),
          "image", List.of("units", "density"),
          "check", List.of("units", "sheet", "flat", "fit"));

  /** The one value of a flat that a picture is measured for. */
  private static final DescribedPredicate<JavaClass> MEASURED = equivalentTo(InkedBox.class);

  @Test
  void everyPackageHasItsPlaceInThePicture() {
    Set<String> there =
        Library.CLASSES.getPackage("dev.placket.layout").getSubpackages().stream()
            .map(JavaPackage::getRelativeName)
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(new TreeSet<>(MAY_USE.keySet()), there);
  }

  @ParameterizedTest
  @ValueSource(strings = {"units", "sheet", "flat", "fit", "callout", "density", "image", "check"})
  void dependenciesPointLeft(String name) {
    String[] foreign =
        MAY_USE.keySet().stream()
            .filter(other -> !other.equals(name) && !MAY_USE.get(name).contains(other))
            .map(other -> Library.ROOT + other + "..")
            .toArray(String[]::new);
    noClasses()
        .that()
        .resideInAPackage(Library.ROOT + name + "..")
        .should()
        .dependOnClassesThat(
            resideInAnyPackage(foreign).and(not(name.equals("image") ? MEASURED : alwaysFalse())))
        .check(Library.CLASSES);
  }

  @Test
  void readingKnowsNothingOfPreparing() {
    noClasses()
        .that()
        .resideInAPackage(Library.ROOT + "image")
        .should()
        .dependOnClassesThat()
        .resideInAPackage(Library.ROOT + "image.prepare..")
        .check(Library.CLASSES);
  }

  /** What reads a drawing uses the list, the rewritings and bridges, never the other way round. */
  @ParameterizedTest
  @ValueSource(strings = {"image.svg", "image.svg.rewrite", "image.svg.bridge"})
  void rewritingsAndBridgesStandAlone(String name) {
    noClasses()
        .that()
        .resideInAPackage(Library.ROOT + name)
        .should()
        .dependOnClassesThat(
            resideInAnyPackage("dev.placket.layout..")
                .and(not(resideInAnyPackage(Library.ROOT + name))))
        .check(Library.CLASSES);
  }

  @Test
  void styleSheetsKnowNothingOfPictures() {
    noClasses()
        .that()
        .resideInAPackage(Library.ROOT + "image.css")
        .should()
        .dependOnClassesThat(
            resideInAnyPackage("dev.placket..")
                .and(not(resideInAPackage(Library.ROOT + "image.css"))))
        .orShould()
        .dependOnClassesThat()
        .resideInAnyPackage("org.apache.batik..", "java.awt..")
        .check(Library.CLASSES);
  }

  @Test
  void noPackagesRunInACycle() {
    slices().matching("dev.placket.layout.(*)..").should().beFreeOfCycles().check(Library.CLASSES);
  }

  @Test
  void theRefereeUsesValuesAndNothingThatWorksThemOut() {
    noClasses()
        .that()
        .resideInAPackage(Library.ROOT + "check..")
        .should()
        .dependOnClassesThat()
        .belongToAnyOf(Fitter.class, Targets.class, PlacedBoxes.class, ExactBox.class)
        .check(Library.CLASSES);
  }

  @Test
  void theSearchIsNobodysBusiness() {
    // What the fit package shows is values and the ways in.
    classes()
        .that()
        .resideInAPackage(Library.ROOT + "fit..")
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
        .check(Library.CLASSES);
  }
}
