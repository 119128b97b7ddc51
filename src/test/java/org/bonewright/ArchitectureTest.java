package org.bonewright;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.net.URI;
import org.jspecify.annotations.NullMarked;

@AnalyzeClasses(packages = "org.bonewright", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  @ArchTest
  static final ArchRule data_flows_one_way =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .layer("casefile")
          .definedBy("org.bonewright.casefile")
          .layer("reading")
          .definedBy("org.bonewright.casefile.reading")
          .layer("checking")
          .definedBy("org.bonewright.casefile.checking")
          .layer("bone")
          .definedBy("org.bonewright.bone..")
          .layer("mechanics")
          .definedBy("org.bonewright.mechanics..")
          .layer("bench")
          .definedBy("org.bonewright.bench")
          .layer("measures")
          .definedBy("org.bonewright.measures..")
          .layer("principles")
          .definedBy("org.bonewright.principles", "org.bonewright.rules..")
          .layer("shelf")
          .definedBy("org.bonewright.shelf")
          .layer("site")
          .definedBy("org.bonewright.site")
          .layer("review")
          .definedBy("org.bonewright.review")
          .layer("change")
          .definedBy("org.bonewright.change")
          .layer("report")
          .definedBy("org.bonewright.report..")
          .layer("drawing")
          .definedBy("org.bonewright.drawing..")
          .layer("page")
          .definedBy("org.bonewright.page")
          .layer("markup")
          .definedBy("org.bonewright.markup")
          .layer("handbook")
          .definedBy("org.bonewright.handbook..")
          .layer("server")
          .definedBy("org.bonewright.server..")
          .layer("cli")
          .definedBy("org.bonewright.cli")
          .whereLayer("casefile")
          .mayNotAccessAnyLayer()
          .whereLayer("reading")
          .mayOnlyAccessLayers("casefile")
          .whereLayer("checking")
          .mayOnlyAccessLayers("casefile", "reading")
          .whereLayer("bone")
          .mayOnlyAccessLayers("casefile")
          .whereLayer("mechanics")
          .mayNotAccessAnyLayer()
          .whereLayer("bench")
          .mayOnlyAccessLayers("casefile", "reading", "bone", "mechanics")
          .whereLayer("measures")
          .mayOnlyAccessLayers("casefile", "bone", "mechanics")
          .whereLayer("principles")
          .mayOnlyAccessLayers("casefile", "bone", "measures")
          .whereLayer("site")
          .mayOnlyAccessLayers("casefile", "reading", "bone", "measures", "principles", "shelf")
          .whereLayer("shelf")
          .mayOnlyAccessLayers("casefile")
          .whereLayer("site")
          .mayOnlyBeAccessedByLayers("server", "cli")
          .whereLayer("review")
          .mayOnlyAccessLayers("casefile", "bone", "measures", "principles")
          .whereLayer("change")
          .mayOnlyAccessLayers(
              "casefile", "reading", "checking", "bone", "measures", "principles", "shelf")
          .whereLayer("report")
          .mayOnlyAccessLayers(
              "change", "review", "principles", "measures", "bone", "markup", "shelf")
          .whereLayer("drawing")
          .mayOnlyAccessLayers("casefile", "bone", "measures")
          .whereLayer("page")
          .mayOnlyBeAccessedByLayers("server", "cli")
          .whereLayer("markup")
          .mayNotAccessAnyLayer()
          .whereLayer("handbook")
          .mayOnlyAccessLayers("casefile", "bone", "measures", "principles", "markup")
          .whereLayer("handbook")
          .mayOnlyBeAccessedByLayers("server", "cli")
          .whereLayer("server")
          .mayOnlyBeAccessedByLayers("cli")
          .whereLayer("cli")
          .mayNotBeAccessedByAnyLayer()
          .because("a number that flows back could justify itself");

  @ArchTest
  static final ArchRule packages_are_free_of_cycles =
      slices()
          .matching("org.bonewright.(**)")
          .should()
          .beFreeOfCycles()
          .because("each package knows only those before it");

  @ArchTest
  static final ArchRule only_principles_knows_the_rule_engine =
      noClasses()
          .that()
          .resideOutsideOfPackages("org.bonewright.principles", "org.bonewright.rules..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.drools..", "org.kie..")
          .because("the engine is a detail of how principles are judged");

  @ArchTest
  static final ArchRule records_of_the_case_know_no_library =
      noClasses()
          .that()
          .resideInAPackage("org.bonewright.casefile")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("tools.jackson..", "com.github.victools..")
          .because("a case is data, however it was written down");

  @ArchTest
  static final ArchRule nothing_depends_on_the_clock_or_on_chance =
      noClasses()
          .that()
          .doNotHaveFullyQualifiedName("org.bonewright.cli.SolveTimes") // tells people, on request
          .should()
          .dependOnClassesThat()
          .haveFullyQualifiedName("java.time.Clock")
          .orShould()
          .dependOnClassesThat()
          .haveFullyQualifiedName("java.time.LocalDate")
          .orShould()
          .dependOnClassesThat()
          .haveFullyQualifiedName("java.time.Instant")
          .orShould()
          .dependOnClassesThat()
          .haveFullyQualifiedName("java.util.Random")
          .orShould()
          .callMethod(System.class, "currentTimeMillis")
          .orShould()
          .callMethod(System.class, "nanoTime")
          .because("the same input gives the same bytes");

  @ArchTest
  static final ArchRule nothing_goes_out_to_a_network =
      noClasses()
          .should()
          .dependOnClassesThat(
              resideInAnyPackage("java.net..", "javax.net..").and(not(type(URI.class))))
          .because("nothing entered leaves the machine; a URI is only a name");

  @ArchTest
  static final ArchRule only_the_handbook_to_print_knows_how_a_pdf_is_made =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.bonewright.handbook.pdf")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("com.openhtmltopdf..", "org.apache.pdfbox..", "org.apache.fontbox..")
          .because("what a page says does not hang on how it is printed");

  @ArchTest
  static final ArchRule what_the_handbook_says_knows_no_markup =
      noClasses()
          .that()
          .resideInAnyPackage("org.bonewright.handbook.model", "org.bonewright.handbook.content")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.bonewright.markup", "org.bonewright.handbook.html..")
          .because("pages and print show the same, each in its own way");

  @ArchTest
  static final ArchRule only_the_server_knows_its_framework =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.bonewright.server..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.springframework..", "jakarta.servlet..", "io.swagger..")
          .because("commands start before, and without, any server");

  @ArchTest
  static final ArchRule state_is_final =
      fields()
          .that()
          .areDeclaredInClassesThat()
          .resideInAnyPackage(
              "org.bonewright.casefile..",
              "org.bonewright.bone..",
              "org.bonewright.principles",
              "org.bonewright.review")
          .and()
          .areStatic()
          .should()
          .beFinal()
          .because("reviews of several threads must not meet");

  @ArchTest
  static final ArchRule every_package_says_why_it_exists_and_is_null_marked =
      classes()
          .that()
          .resideOutsideOfPackage("org.bonewright.rules..")
          .should(resideInADocumentedPackage());

  @ArchTest
  static final ArchRule names_say_the_noun =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.bonewright.rules..")
          .should()
          .haveSimpleNameEndingWith("Utils")
          .orShould()
          .haveSimpleNameEndingWith("Helper")
          .orShould()
          .haveSimpleNameEndingWith("Manager")
          .orShould()
          .haveSimpleNameEndingWith("Impl");

  private static ArchCondition<JavaClass> resideInADocumentedPackage() {
    return new ArchCondition<>("reside in a package with a null-marked package-info") {
      @Override
      public void check(JavaClass javaClass, ConditionEvents events) {
        boolean marked = javaClass.getPackage().isAnnotatedWith(NullMarked.class);
        events.add(
            new SimpleConditionEvent(
                javaClass, marked, javaClass.getPackageName() + " has no package-info"));
      }
    };
  }
}
