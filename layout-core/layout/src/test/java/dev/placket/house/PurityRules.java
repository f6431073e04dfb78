package dev.placket.house;

import static com.tngtech.archunit.core.domain.JavaModifier.SYNTHETIC;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_USE_JAVA_UTIL_LOGGING;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Collection;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The library is pure: no clock, no chance, no output, no state that outlives a call. */
public abstract class PurityRules {
  private static final Pattern CLOCK =
      Pattern.compile(
          "java\\.lang\\.System\\.(currentTimeMillis|nanoTime)|java\\.time\\..*\\.now"
              + "|java\\.util\\.(Date|GregorianCalendar)\\.<init>|java\\.util\\.Calendar\\.getInstance");
  private static final Pattern CHANCE =
      Pattern.compile(
          "java\\.lang\\.Math\\.random|java\\.util\\.concurrent\\.ThreadLocalRandom\\..*"
              + "|java\\.security\\.SecureRandom\\..*|java\\.util\\.UUID\\.randomUUID"
              + "|java\\.lang\\.System\\.identityHashCode|java\\.util\\.Collections\\.shuffle");
  private static final Pattern WRITING =
      Pattern.compile(
          "java\\.nio\\.file\\.Files\\.(write.*|newOutputStream|newBufferedWriter|create.*|delete.*"
              + "|copy|move)|java\\.io\\.(FileOutputStream|FileWriter|RandomAccessFile|PrintWriter)"
              + "\\.<init>|java\\.io\\.File\\.(createTempFile|delete.*|mkdir.*)");
  private static final Pattern ENVIRONMENT =
      Pattern.compile(
          "java\\.lang\\.System\\.(getenv|getProperty|setProperty|exit|getLogger|console)");

  /** The library under test. */
  protected abstract Library library();

  @Test
  void readsNoClock() {
    neverCalls(CLOCK);
  }

  @Test
  void takesNoChance() {
    neverCalls(CHANCE);
    noClasses().should().callConstructor(Random.class).check(library().classes());
  }

  @Test
  void writesNoFile() {
    neverCalls(WRITING);
  }

  @Test
  void asksNothingOfItsEnvironment() {
    neverCalls(ENVIRONMENT);
  }

  @Test
  void printsAndLogsNothing() {
    NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS.check(library().classes());
    NO_CLASSES_SHOULD_USE_JAVA_UTIL_LOGGING.check(library().classes());
  }

  @Test
  void keepsNoStateInStatics() {
    fields()
        .that()
        .areStatic()
        .and()
        .doNotHaveModifier(SYNTHETIC)
        .should()
        .beFinal()
        .andShould(notBeMutable())
        .check(library().classes());
  }

  private void neverCalls(Pattern forbidden) {
    noClasses()
        .should()
        .callCodeUnitWhere(
            DescribedPredicate.describe(
                "it matches " + forbidden,
                (JavaCall<?> call) ->
                    forbidden
                        .matcher(call.getTargetOwner().getName() + "." + call.getTarget().getName())
                        .matches()))
        .check(library().classes());
  }

  /** Constants may be values and private tables; a table must not be handed out. */
  private static ArchCondition<JavaField> notBeMutable() {
    return new ArchCondition<>("hold no mutable state") {
      @Override
      public void check(JavaField field, ConditionEvents events) {
        JavaClass type = field.getRawType();
        boolean openTable = type.isArray() && !field.getModifiers().contains(JavaModifier.PRIVATE);
        boolean container =
            !type.isInterface()
                && (type.isAssignableTo(Collection.class) || type.isAssignableTo(Map.class));
        boolean cell =
            Set.of("java.util.concurrent", "java.util.concurrent.atomic", "java.lang.ref")
                    .contains(type.getPackageName())
                || type.isAssignableTo(ThreadLocal.class)
                || type.isAssignableTo(StringBuilder.class)
                || type.isAssignableTo(Random.class);
        boolean mutable = openTable || container || cell;
        events.add(new SimpleConditionEvent(field, !mutable, field.getDescription()));
      }
    };
  }
}
