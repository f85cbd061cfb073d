package frieze.dryrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.diagnostic.Code;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.scene.Surroundings;
import frieze.rs274.ReadingRules;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Programs for a torch, with M3 and M5 to light it and put it out. */
class TorchTest {
  private static final ReadingRules TORCH = ReadingRules.REPORT.but().torch(3, 5).build();
  private static final String GOOD =
      """
      G17 G21 G90 G94
      G0 Z20
      G0 X20 Y20
      G0 Z3.8
      M3
      G4 P0.5
      G1 Z1.5 F2500
      G1 X80
      G3 X80 Y40 I0 J10
      G1 X20
      M5
      G0 Z20
      G0 X100 Y20
      G0 Z3.8
      M3
      G4 P0.5
      G1 Z1.5
      G1 X140
      M5
      G0 Z20
      M2
      """;

  private static DryRunResult run(String text) {
    return DryRun.in(Surroundings.UNKNOWN)
        .run(List.of(ProgramText.of("t.nc", text.getBytes(StandardCharsets.US_ASCII), TORCH)));
  }

  private static List<Code> codes(String text) {
    return run(text).findings().stream().map(Finding::code).toList();
  }

  @Test
  void a_good_program_has_no_finding() {
    assertThat(codes(GOOD)).isEmpty();
  }

  @Test
  void each_fault_is_named() {
    assertThat(codes(GOOD.replaceFirst("M5\n", ""))).contains(FindingCode.TORCH_RAPID);
    assertThat(codes(GOOD.replaceFirst("G4 P0.5\n", ""))).containsExactly(FindingCode.NO_PIERCE);
    assertThat(codes(GOOD.replace("X140\nM5\nG0 Z20\n", "X140\n")))
        .containsExactly(FindingCode.TORCH_LEFT_ON);
    assertThat(codes(GOOD.replace("Z3.8\nM3\nG4 P0.5\nG1 Z1.5\n", "Z3.8\nG1 Z1.5\n")))
        .contains(FindingCode.TORCH_OFF);
  }

  @Test
  void another_cutting_height_is_a_warning_with_its_amount() {
    Finding finding = run(GOOD.replace("G1 Z1.5\nG1 X140", "G1 Z3.5\nG1 X140")).findings().get(0);
    assertThat(finding.code()).isEqualTo(FindingCode.TORCH_HEIGHT);
    assertThat(finding.amount().value()).isCloseTo(2, within(1e-9));
  }

  /** Twelve pierces of half a second, 1800 mm at 2500 and 900 mm at 8000 mm/min: 55.95 s. */
  @Test
  void pierces_and_cuts_add_up() {
    StringBuilder text = new StringBuilder("G17 G21 G91 G94\nG0 X0 Y0 Z0\n");
    for (int i = 0; i < 12; i++) {
      text.append("M3\nG4 P0.5\nG1 X150 F2500\nM5\nG1 Y75 F8000\n");
    }
    DryRunResult result = run(text + "M2\n");
    assertThat(result.time().totalSeconds()).isCloseTo(55.95, within(1e-9));
  }
}
