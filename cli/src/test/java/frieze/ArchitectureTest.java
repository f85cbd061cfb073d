package frieze;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Who may know whom. The folders tell the architecture; these rules keep them honest. */
@AnalyzeClasses(packages = "frieze", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  private static final String[] GEOMETRY = {
    "frieze.diagnostic..",
    "frieze.curve..",
    "frieze.region..",
    "frieze.artwork..",
    "frieze.layout..",
    "frieze.shop..",
    "frieze.design..",
    "frieze.motion..",
    "frieze.plan.."
  };

  private static final String[] POSTS = {
    "frieze.lower..", "frieze.post..", "frieze.rs274..", "frieze.dryrun.."
  };

  private static final String[] CLI = {"frieze.cli..", "frieze.job..", "frieze.sheet.."};

  /** What a check may see of the rest: facts and intents, never how a cut was planned. */
  private static final DescribedPredicate<JavaClass> PLANNING =
      resideInAnyPackage("frieze.plan..", "frieze.layout..", "frieze.artwork..")
          .or(
              resideInAPackage("frieze.region..")
                  .and(not(simpleNameIn("Region", "Region$Locator", "Ring", "FillRule"))))
          .or(resideInAPackage("frieze.curve..").and(simpleNameIn("ArcFitter")))
          .as("planning: offsets, axes, arc fitting, layout and artwork");

  private static DescribedPredicate<JavaClass> simpleNameIn(String... names) {
    return DescribedPredicate.describe(
        "one of " + String.join(", ", names),
        c -> java.util.List.of(names).contains(c.getName().replaceAll(".*\\.", "")));
  }

  @ArchTest
  static final ArchRule geometry_knows_no_programs =
      noClasses()
          .that()
          .resideInAnyPackage(GEOMETRY)
          .should()
          .dependOnClassesThat(resideInAnyPackage(POSTS).or(resideInAnyPackage(CLI)))
          .because("millimetres come before G-code; arrows run cli, posts, geometry");

  @ArchTest
  static final ArchRule posts_know_no_people =
      noClasses()
          .that()
          .resideInAnyPackage(POSTS)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(CLI)
          .because("a post is tried without a console or a job file");

  @ArchTest
  static final ArchRule the_dry_run_knows_no_planner =
      noClasses()
          .that()
          .resideInAnyPackage("frieze.rs274..", "frieze.dryrun..")
          .should()
          .dependOnClassesThat(PLANNING)
          .because("a check that shares code with what it checks repeats its mistakes");

  @ArchTest
  static final ArchRule the_reader_shares_nothing_with_the_writer =
      noClasses()
          .that()
          .resideInAnyPackage("frieze.rs274..", "frieze.dryrun..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("frieze.lower..", "frieze.post..")
          .because("a text is judged by what it says, not by what was meant");

  @ArchTest
  static final ArchRule posts_do_not_plan =
      noClasses()
          .that()
          .resideInAnyPackage("frieze.lower..", "frieze.post..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("frieze.plan..", "frieze.layout..", "frieze.artwork..")
          .because("a post only writes what it is told");

  @ArchTest
  static final ArchRule intents_know_no_toolpath =
      noClasses()
          .that()
          .resideInAPackage("frieze.design..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("frieze.plan..")
          .because("an intent made from a toolpath can't find a wrong toolpath");

  @ArchTest
  static final ArchRule only_the_command_line_touches_the_disk =
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

  @ArchTest
  static final ArchRule nothing_prints_but_the_command_line =
      noClasses()
          .that()
          .resideOutsideOfPackage("frieze.cli..")
          .should()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err")
          .because("standard output is for data that a person asked for");

  @ArchTest
  static final ArchRule no_clock_and_no_chance =
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

  @ArchTest
  static final ArchRule one_package_for_each_library =
      noClasses()
          .that()
          .resideOutsideOfPackages("frieze.region..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.locationtech.jts..", "org.tinfour..")
          .because("the polygon library stays inside one package");

  @ArchTest
  static final ArchRule batik_stays_in_artwork =
      noClasses()
          .that()
          .resideOutsideOfPackages("frieze.artwork..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.apache.batik..")
          .because("drawings are millimetres once they are read");

  @ArchTest
  static final ArchRule picocli_stays_in_cli =
      noClasses()
          .that()
          .resideOutsideOfPackages("frieze.cli..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("picocli..")
          .because("commands are thin");

  @ArchTest
  static final ArchRule no_circles =
      slices()
          .matching("frieze.(*)..")
          .should()
          .beFreeOfCycles()
          .because("the packages are a pipeline, read from left to right");
}
