package frieze.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import frieze.build.Build;
import frieze.diagnostic.BadInputException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A panel for a drawn opening into which a tongue of steel reaches, 4 mm wide. */
class SteelsPlaceTest {
  private static final String EDGE =
      "<svg xmlns='http://www.w3.org/2000/svg' width='300mm' height='120mm' viewBox='0 0 300 120'>"
          + "<path d='M0 0H148V60H152V0H300V120H0Z'/></svg>";
  private static final String JOB =
      """
      job: Tongue
      units: mm
      panels:
        p:
          outline: {file: edge.svg}
          fit: {gap: 0.5}
          stock: {material: white ash, length: 340, width: 160, thickness: 19}
          work:
            - cutout: {tool: flat 1/4, hold: {tabs: 4}}
      """;

  private static void read(String job) {
    MemoryFiles files = new MemoryFiles().with("job.yaml", job).with("edge.svg", EDGE);
    Build.designs(JobReader.read("job.yaml", files, List.of("short-arcs")), files);
  }

  private static String refused(String job) {
    BadInputException e = catchThrowableOfType(BadInputException.class, () -> read(job));
    return e == null ? "" : e.diagnostics().get(0) + " " + e.diagnostics().get(0).hint();
  }

  /** The slit is as wide as the tongue and two gaps. */
  @Test
  void a_bit_that_does_not_enter_the_slit_for_the_steel_is_refused() {
    assertThat(refused(JOB))
        .contains("OPEN-006", "6.35 mm", "up to 5 mm", "4 mm (0.157 in) of it", "larger gap");
    assertThat(refused(JOB.replace("hold", "corners: ear, hold"))).contains("OPEN-006");
    assertThat(refused(JOB.replace("gap: 0.5", "gap: 1.2"))).isEmpty();
  }

  /** A radius r reaches sqrt 2 (r - g) - r into a sharp corner behind a gap g: 0.09 and -0.05. */
  @Test
  void a_bit_that_leaves_its_radius_in_the_steels_corners_is_refused() {
    String small = JOB.replace("flat 1/4", "flat 1/8");
    assertThat(refused(small)).isEmpty();
    String tight = small.replace("gap: 0.5", "gap: 0.4");
    assertThat(refused(tight)).contains("OPEN-006", "0.08 mm");
    // The gap has rounded the panel's corners, and only sharp ones are relieved.
    assertThat(refused(tight.replace("hold", "corners: ear, hold"))).contains("OPEN-006");
  }
}
