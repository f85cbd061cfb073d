package frieze;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.ArchConfiguration;
import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Who may know whom. The folders tell the architecture; these rules keep them honest. */
class ArchitectureTest {
  private static final String[] GEOMETRY = {
    "frieze.diagnostic..",
    "frieze.curve..",
    "frieze.region..",
    "frieze.artwork..",
    "frieze.trace..",
    "frieze.layout..",
    "frieze.shop..",
    "frieze.wood..",
    "frieze.opening..",
    "frieze.design..",
    "frieze.screw..",
    "frieze.motion..",
    "frieze.plan..",
    "frieze.bridge..",
    "frieze.steps..",
    "frieze.torch.."
  };

  private static final String[] POSTS = {
    "frieze.lower..",
    "frieze.post..",
    "frieze.rs274..",
    "frieze.field..",
    "frieze.clock..",
    "frieze.gouge..",
    "frieze.dryrun.."
  };

  private static final String[] CHECKS = {
    "frieze.rs274..", "frieze.field..", "frieze.clock..", "frieze.gouge..", "frieze.dryrun.."
  };

  private static final String[] CLI = {
    "frieze.cli..",
    "frieze.build..",
    "frieze.job..",
    "frieze.keys..",
    "frieze.sheet..",
    "frieze.template..",
    "frieze.image.."
  };

  /** What a check may see of the rest: facts and intents, never how a cut was planned. */
  private static final DescribedPredicate<JavaClass> PLANNING =
      resideInAnyPackage(
              "frieze.plan..",
              "frieze.bridge..",
              "frieze.steps..",
              "frieze.torch..",
              "frieze.layout..",
              "frieze.artwork..",
              "frieze.trace..")
          .or(
              resideInAPackage("frieze.region..")
                  .and(not(simpleNameIn("Region", "Region$Locator", "Ring", "FillRule"))))
          .or(resideInAPackage("frieze.curve..").and(simpleNameIn("ArcFitter")))
          .as("planning: offsets, axes, arc fitting, layout and artwork");

  private static DescribedPredicate<JavaClass> simpleNameIn(String... names) {
    return DescribedPredicate.describe(
        "one of " + String.join(", ", names),
        c -> List.of(names).contains(c.getName().replaceAll(".*\\.", "")));
  }

  private static final ArchRule GEOMETRY_KNOWS_NO_PROGRAMS =
      noClasses()
          .that()
          .resideInAnyPackage(GEOMETRY)
          .should()
          .dependOnClassesThat(resideInAnyPackage(POSTS).or(resideInAnyPackage(CLI)))
          .because("millimetres come before G-code; arrows run cli, posts, geometry");

  private static final ArchRule POSTS_KNOW_NO_PEOPLE =
      noClasses()
          .that()
          .resideInAnyPackage(POSTS)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(CLI)
          .because("a post is tried without a console or a job file");

  private static final ArchRule THE_DRY_RUN_KNOWS_NO_PLANNER =
      noClasses()
          .that()
          .resideInAnyPackage(CHECKS)
          .should()
          .dependOnClassesThat(PLANNING)
          .because("a check that shares code with what it checks repeats its mistakes");

  private static final ArchRule THE_READER_SHARES_NOTHING_WITH_THE_WRITER =
      noClasses()
          .that()
          .resideInAnyPackage(CHECKS)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("frieze.lower..", "frieze.post..")
          .because("a text is judged by what it says, not by what was meant");

  private static final ArchRule MATERIAL_AND_TIME_KNOW_NO_PROGRAM =
      noClasses()
          .that()
          .resideInAnyPackage("frieze.field..", "frieze.clock..", "frieze.gouge..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("frieze.rs274..", "frieze.dryrun..")
          .because("stock and clock are fed by the dry run and are of use without a text");

  private static final ArchRule READING_KNOWS_NO_MAKING =
      noClasses()
          .that()
          .resideInAnyPackage("frieze.job..", "frieze.sheet..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("frieze.build..", "frieze.template..", "frieze.cli..")
          .because("a job is read, and a sheet drawn, without knowing how programs are made");

  private static final ArchRule TABLES_OF_KEYS_KNOW_NO_JOB =
      noClasses()
          .that()
          .resideInAPackage("frieze.keys..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("frieze.job..", "frieze.sheet..", "frieze.cli..")
          .because("how a value is read has nothing to do with what it is good for");

  private static final ArchRule THE_DRY_RUN_HAS_STOREYS =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .layer("said")
          .definedBy("frieze.dryrun.finding")
          .layer("seen")
          .definedBy("frieze.dryrun.scene")
          .layer("asked")
          .definedBy("frieze.dryrun.check")
          .layer("torch")
          .definedBy("frieze.dryrun.torch")
          .layer("run")
          .definedBy("frieze.dryrun")
          .whereLayer("run")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("asked")
          .mayOnlyBeAccessedByLayers("run")
          .whereLayer("torch")
          .mayOnlyBeAccessedByLayers("run")
          .whereLayer("seen")
          .mayOnlyBeAccessedByLayers("asked", "torch", "run")
          .because("a check sees moves and says what it found, and knows nobody who asks it");

  private static final ArchRule WORK_IS_PLANNED_APART =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .layer("order")
          .definedBy("frieze.plan.order")
          .layer("cut")
          .definedBy("frieze.plan.cut")
          .layer("recess")
          .definedBy("frieze.plan.recess")
          .layer("vgroove")
          .definedBy("frieze.plan.vgroove")
          .layer("other work")
          .definedBy(
              "frieze.plan.groove", "frieze.plan.cutout", "frieze.plan.bore", "frieze.plan.edge")
          .layer("plan")
          .definedBy("frieze.plan")
          .whereLayer("plan")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("other work")
          .mayOnlyBeAccessedByLayers("plan")
          .whereLayer("vgroove")
          .mayOnlyBeAccessedByLayers("plan")
          .whereLayer("recess")
          .mayOnlyBeAccessedByLayers("vgroove", "plan")
          .because("each kind of work knows what a cut is, and none of the others");

  private static final ArchRule POSTS_DO_NOT_PLAN =
      noClasses()
          .that()
          .resideInAnyPackage("frieze.lower..", "frieze.post..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "frieze.plan..",
              "frieze.torch..",
              "frieze.layout..",
              "frieze.artwork..",
              "frieze.trace..")
          .because("a post only writes what it is told");

  private static final ArchRule INTENTS_KNOW_NO_TOOLPATH =
      noClasses()
          .that()
          .resideInAPackage("frieze.design..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("frieze.plan..")
          .because("an intent made from a toolpath can't find a wrong toolpath");

  private static final ArchRule ONLY_THE_COMMAND_LINE_TOUCHES_THE_DISK =
      noClasses()
          .that()
          .resideInAnyPackage(GEOMETRY)
          .or()
          .resideInAnyPackage(POSTS)
          .should()
          .dependOnClassesThat()
          .haveNameMatching(
              "java\\.nio\\.file\\.Files|java\\.io\\.File(|Writer|OutputStream|InputStream|Reader)")
          .because("output is data until the last step");

  private static final ArchRule NOTHING_PRINTS_BUT_THE_COMMAND_LINE =
      noClasses()
          .that()
          .resideOutsideOfPackage("frieze.cli..")
          .should()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err")
          .because("standard output is for data that a person asked for");

  private static final ArchRule NO_CLOCK_AND_NO_CHANCE =
      noClasses()
          .should()
          .callMethod(System.class, "currentTimeMillis")
          .orShould()
          .callMethod(System.class, "nanoTime")
          .orShould()
          .callMethod(Math.class, "random")
          .orShould()
          .dependOnClassesThat()
          .haveNameMatching("java\\.time\\.(Clock|LocalDate.*|Instant|ZonedDateTime)")
          .because("the same input gives the same bytes next year");

  private static final ArchRule ONE_PACKAGE_FOR_EACH_LIBRARY =
      noClasses()
          .that()
          .resideOutsideOfPackages("frieze.region..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.locationtech.jts..", "org.tinfour..")
          .because("the polygon library stays inside one package");

  private static final ArchRule BATIK_STAYS_IN_ARTWORK =
      noClasses()
          .that()
          .resideOutsideOfPackages("frieze.artwork..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.apache.batik..")
          .because("drawings are millimetres once they are read");

  private static final ArchRule LEAST_SQUARES_STAY_WHERE_MEASUREMENTS_ARE =
      noClasses()
          .that()
          .resideOutsideOfPackages("frieze.opening..", "frieze.trace..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.hipparchus..")
          .because("only openings and pictures are measured: the rest is exact");

  private static final ArchRule PICOCLI_STAYS_IN_CLI =
      noClasses()
          .that()
          .resideOutsideOfPackages("frieze.cli..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("picocli..")
          .because("commands are thin");

  private static final ArchRule NO_CIRCLES =
      slices()
          .matching("frieze.(*)..")
          .should()
          .beFreeOfCycles()
          .because("the packages are a pipeline, read from left to right");

  private static final JavaClasses CLASSES = classes();

  /** The rules go by names: what a library's classes are made of need not be read. */
  private static JavaClasses classes() {
    ArchConfiguration.get().setResolveMissingDependenciesFromClassPath(false);
    return new ClassFileImporter()
        .withImportOption(new ImportOption.DoNotIncludeTests())
        .withImportOption(location -> !location.contains("-tests.jar"))
        .importPackages("frieze");
  }

  static Stream<ArchRule> rules() {
    return Stream.of(
        GEOMETRY_KNOWS_NO_PROGRAMS,
        POSTS_KNOW_NO_PEOPLE,
        THE_DRY_RUN_KNOWS_NO_PLANNER,
        THE_READER_SHARES_NOTHING_WITH_THE_WRITER,
        MATERIAL_AND_TIME_KNOW_NO_PROGRAM,
        READING_KNOWS_NO_MAKING,
        TABLES_OF_KEYS_KNOW_NO_JOB,
        THE_DRY_RUN_HAS_STOREYS,
        WORK_IS_PLANNED_APART,
        POSTS_DO_NOT_PLAN,
        INTENTS_KNOW_NO_TOOLPATH,
        ONLY_THE_COMMAND_LINE_TOUCHES_THE_DISK,
        NOTHING_PRINTS_BUT_THE_COMMAND_LINE,
        NO_CLOCK_AND_NO_CHANCE,
        ONE_PACKAGE_FOR_EACH_LIBRARY,
        BATIK_STAYS_IN_ARTWORK,
        LEAST_SQUARES_STAY_WHERE_MEASUREMENTS_ARE,
        PICOCLI_STAYS_IN_CLI,
        NO_CIRCLES);
  }

  @ParameterizedTest
  @MethodSource("rules")
  void holds(ArchRule rule) {
    rule.check(CLASSES);
  }

  /** What the rules forbid elsewhere is seen where it is allowed. */
  @Test
  void what_is_looked_for_can_be_seen() {
    for (ArchRule broken :
        List.of(
            noClasses()
                .that()
                .resideInAPackage("frieze.cli..")
                .should()
                .accessField(System.class, "out"),
            noClasses()
                .that()
                .resideInAPackage("frieze.cli..")
                .should()
                .dependOnClassesThat()
                .haveNameMatching("java\\.nio\\.file\\.Files"),
            noClasses()
                .that()
                .resideInAPackage("frieze.region..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.locationtech.jts.."),
            noClasses()
                .that()
                .resideInAPackage("frieze.curve..")
                .should()
                .callMethod(Math.class, "cos", double.class))) {
      assertThat(broken.evaluate(CLASSES).hasViolation()).as(broken.getDescription()).isTrue();
    }
  }
}
