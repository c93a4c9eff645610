package org.riseandgel.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.CanBeAnnotated.Predicates.annotatedWith;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The arrows between packages go one way. A rule for a package that does not exist would prove nothing, so each must. */
class ArrowsTest {
    private static final String ROOT = "org.riseandgel.";
    private static final JavaClasses HOUSE = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.riseandgel");

    /** Each package and what of the house it may know besides itself. */
    private static final Map<String, List<String>> MAY_KNOW = mayKnow();

    private static Map<String, List<String>> mayKnow() {
        Map<String, List<String>> arrows = new LinkedHashMap<>();
        arrows.put("core", List.of());
        arrows.put("platform", List.of("core"));
        arrows.put("bench", List.of("core", "platform"));
        arrows.put("exercise", List.of("bench", "core"));
        arrows.put("course", List.of("exercise", "bench", "core", "platform", "account"));
        arrows.put("account", List.of("platform", "core"));
        arrows.put(
                "practice",
                List.of("clearance", "sitting", "course", "exercise", "bench", "core", "platform", "account"));
        arrows.put("grading", List.of("course", "exercise", "bench", "core", "platform", "account"));
        arrows.put("sitting", List.of("course", "exercise", "bench", "core", "platform", "account"));
        arrows.put("simulation", List.of("course", "exercise", "core", "platform", "account"));
        arrows.put("clearance", List.of("sitting", "course", "exercise", "core", "platform", "account"));
        arrows.put(
                "progress",
                List.of(
                        "practice",
                        "grading",
                        "clearance",
                        "course",
                        "exercise",
                        "bench",
                        "core",
                        "platform",
                        "account"));
        return arrows;
    }

    @TestFactory
    List<DynamicTest> arrowsGoOneWay() {
        return MAY_KNOW.entrySet().stream()
                .map(arrow -> DynamicTest.dynamicTest(
                        arrow.getKey() + " knows only " + arrow.getValue(),
                        () -> knowsOnly(arrow.getKey(), arrow.getValue()).check(HOUSE)))
                .toList();
    }

    @TestFactory
    List<DynamicTest> everyPackageOfTheListHasClasses() {
        return MAY_KNOW.keySet().stream()
                .map(name ->
                        DynamicTest.dynamicTest(name, () -> assertThat(HOUSE.that(resideInAPackage(ROOT + name + "..")))
                                .as("classes in %s", name)
                                .isNotEmpty()))
                .toList();
    }

    @Test
    void everyPackageOfTheHouseIsInTheList() {
        assertThat(HOUSE.stream()
                        .map(JavaClass::getPackageName)
                        .filter(name -> name.startsWith(ROOT))
                        .map(name -> name.substring(ROOT.length()).split("\\.")[0])
                        .distinct())
                .isSubsetOf(MAY_KNOW.keySet());
    }

    @Test
    void coreKnowsNothingButJavaAndHipparchus() {
        classes()
                .that()
                .resideInAPackage(ROOT + "core..")
                .should()
                .onlyDependOnClassesThat(resideInAnyPackage("java..", "org.hipparchus..", ROOT + "core.."))
                .check(HOUSE);
    }

    @Test
    void coreAsksNoClockAndNoChance() {
        noClasses()
                .that()
                .resideInAPackage(ROOT + "core..")
                .should()
                .dependOnClassesThat(named("java.time.Clock", "java.util.Random", "java.security.SecureRandom"))
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(System.class, "nanoTime")
                .check(HOUSE);
    }

    @Test
    void gradingIsFreeOfTheFramework() {
        noClasses()
                .that()
                .resideInAPackage(ROOT + "exercise..")
                .should()
                .dependOnClassesThat(resideInAnyPackage("jakarta..", "io.quarkus..", "org.hibernate.."))
                .check(HOUSE);
    }

    @Test
    void theRuleOfTheRegisterKnowsNothingButJava() {
        classes()
                .that()
                .resideInAPackage(ROOT + "clearance.rule..")
                .should()
                .onlyDependOnClassesThat(resideInAnyPackage("java..", ROOT + "clearance.rule.."))
                .check(HOUSE);
        noClasses()
                .that()
                .resideInAPackage(ROOT + "clearance.rule..")
                .should()
                .dependOnClassesThat(named("java.time.Clock", "java.util.Random", "java.security.SecureRandom"))
                .check(HOUSE);
    }

    @Test
    void aForbiddenArrowIsFound() {
        // The same rule turned against a package that really has arrows: it must fail, or the rules above prove
        // nothing.
        assertThat(knowsOnly("bench", List.of()).evaluate(HOUSE).hasViolation()).isTrue();
    }

    @TestFactory
    List<DynamicTest> entitiesNeverLeaveTheirFeature() {
        return MAY_KNOW.keySet().stream()
                .map(name -> DynamicTest.dynamicTest(
                        name, () -> entitiesStayIn(ROOT + name).check(HOUSE)))
                .toList();
    }

    @Test
    void anEntityThatLeavesIsFound() {
        // The account keeps its entities in a package that its other packages use: drawn that tight, the rule must
        // fail.
        assertThat(entitiesStayIn(ROOT + "account.store").evaluate(HOUSE).hasViolation())
                .isTrue();
    }

    @Test
    void noTableHasTwoEntities() {
        assertThat(HOUSE.stream()
                        .filter(type -> type.isAnnotatedWith(Entity.class))
                        .map(type -> type.getAnnotationOfType(Table.class).name()))
                .contains("school", "person", "cohort", "cohort_member", "sign_in", "audit_entry", "lesson_read")
                .doesNotHaveDuplicates();
    }

    private static ArchRule entitiesStayIn(String home) {
        return noClasses()
                .that()
                .resideOutsideOfPackage(home + "..")
                .should()
                .dependOnClassesThat(resideInAPackage(home + "..").and(annotatedWith(Entity.class)));
    }

    private static ArchRule knowsOnly(String name, List<String> others) {
        return noClasses()
                .that()
                .resideInAPackage(ROOT + name + "..")
                .should()
                .dependOnClassesThat(forbiddenTo(name, others))
                .allowEmptyShould(false);
    }

    private static DescribedPredicate<JavaClass> forbiddenTo(String name, List<String> others) {
        return new DescribedPredicate<>("of the house outside " + name + " and " + others) {
            @Override
            public boolean test(JavaClass type) {
                return type.getPackageName().startsWith(ROOT)
                        && !inside(type, name)
                        && others.stream().noneMatch(other -> inside(type, other));
            }
        };
    }

    private static boolean inside(JavaClass type, String name) {
        return (type.getPackageName() + ".").startsWith(ROOT + name + ".");
    }

    private static DescribedPredicate<JavaClass> named(String... names) {
        return new DescribedPredicate<>("named " + List.of(names)) {
            @Override
            public boolean test(JavaClass type) {
                return List.of(names).contains(type.getName());
            }
        };
    }
}
