package longrun;

import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.equivalentTo;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.List;
import longrun.finding.Finding;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The rooms of the house and which way their doors open. */
class ArchitectureTest {

    /** From the top floor down; each may use those that come after it. */
    private static final List<String> ROOMS = List.of(
            "longrun.ui",
            "longrun.http",
            "longrun.draft",
            "longrun.store",
            "longrun.paper",
            "longrun.drawing",
            "longrun.words",
            "longrun.checked",
            "longrun.holdpoint",
            "longrun.review",
            "longrun.rules",
            "longrun.parts",
            "longrun.fuel",
            "longrun.tank",
            "longrun.hotwater",
            "longrun.pressuretest",
            "longrun.pressure",
            "longrun.sizing",
            "longrun.capacity",
            "longrun.piping",
            "longrun.finding",
            "longrun.origin",
            "longrun.plan",
            "longrun.quantity");

    private static final JavaClasses PROGRAM = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("longrun");

    @TestFactory
    List<DynamicTest> eachRoomUsesOnlyThoseBelowIt() {
        List<DynamicTest> out = new ArrayList<>();
        for (int i = 0; i < ROOMS.size(); i++) {
            String room = ROOMS.get(i);
            List<String> above = ROOMS.subList(0, i).stream()
                    .filter(r -> !(room.equals("longrun.store") && r.equals("longrun.http")))
                    .map(r -> r + "..")
                    .toList();
            ArchRule rule = noClasses()
                    .that()
                    .resideInAPackage(room + "..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(
                            above.isEmpty() ? List.of("none").toArray(String[]::new) : above.toArray(String[]::new))
                    .because("what is entered and what is computed must not know who shows or serves it")
                    .allowEmptyShould(true);
            out.add(DynamicTest.dynamicTest(room, () -> rule.check(PROGRAM)));
        }
        return out;
    }

    @Test
    void theDomainIsPlainJava() {
        noClasses()
                .that()
                .resideOutsideOfPackages(
                        "longrun", "longrun.ui..", "longrun.http..", "longrun.draft..", "longrun.store..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.springframework..", "com.vaadin..", "jakarta..", "java.sql..", "org.slf4j..")
                .because("the figures must be the same wherever they are worked out")
                .check(PROGRAM);
    }

    @Test
    void theDomainHasNoClockNoChanceAndNoCountry() {
        noClasses()
                .that()
                .resideOutsideOfPackages(
                        "longrun", "longrun.ui..", "longrun.http..", "longrun.draft..", "longrun.store..")
                .should()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.util.Random")
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(System.class, "nanoTime")
                .orShould()
                .callMethod(java.time.LocalDate.class, "now")
                .orShould()
                .callMethod(java.time.Instant.class, "now")
                .orShould()
                .callMethod(java.util.Locale.class, "getDefault")
                .orShould()
                .callMethod(String.class, "format", String.class, Object[].class)
                .orShould()
                .callMethod(String.class, "toLowerCase")
                .orShould()
                .callMethod(String.class, "toUpperCase")
                .because("the same plan gives the same bytes, today and tomorrow, here and abroad")
                .check(PROGRAM);
    }

    @Test
    void aFindingIsMadeInOneWay() {
        noClasses()
                .that()
                .doNotHaveFullyQualifiedName("longrun.finding.FindingBuilder")
                .and()
                .doNotHaveFullyQualifiedName("longrun.finding.Finding")
                .should()
                .callConstructorWhere(target(owner(equivalentTo(Finding.class))))
                .because("the builder asks for rule, place and source; nothing is common practice by default")
                .check(PROGRAM);
    }

    @Test
    void onlyReadersAndWritersKnowJson() {
        noClasses()
                .that()
                .resideOutsideOfPackages(
                        "longrun.plan.json..",
                        "longrun.review..",
                        "longrun.http..",
                        "longrun.draft..",
                        "longrun.store..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("com.fasterxml..")
                .because("screens read a draft through what is entered, and the rest works on records")
                .check(PROGRAM);
    }

    @Test
    void roomsDoNotGoInCircles() {
        slices().matching("longrun.(**)").should().beFreeOfCycles().check(PROGRAM);
    }

    @Test
    void whatAPersonTypesNeedsNoScreen() {
        noClasses()
                .that()
                .resideInAPackage("longrun.draft..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("com.vaadin..")
                .because("how a house is entered is tried without a page")
                .check(PROGRAM);
    }

    @Test
    void screensKeepOutOfTheStoresInside() {
        classes()
                .that()
                .resideInAPackage("longrun.http..")
                .should()
                .onlyDependOnClassesThat()
                .resideOutsideOfPackages("longrun.ui..", "longrun.store..")
                .because("the service answers about plans it is sent, not about saved houses")
                .check(PROGRAM);
    }
}
