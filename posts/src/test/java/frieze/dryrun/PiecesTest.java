package frieze.dryrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.diagnostic.Code;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.scene.Surroundings;
import frieze.shop.Machine;
import frieze.shop.Stock;
import frieze.shop.Tool;
import frieze.shop.Zero;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Pieces that come free, strips too thin to stand, and where the next tool is touched off. */
class PiecesTest {
  /** Cuts at its centre and takes 8 mm at once, to keep the programs short. */
  private static final Tool BIT =
      new Tool(
          "flat 1/4",
          1,
          Bench.FLAT.shape(),
          2,
          22,
          32,
          true,
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          20000,
          2000,
          400);

  private static final Stock BOARD =
      new Stock(Bench.STOCK.material(), 200, 100, List.of(6.0), false);
  private static final Surroundings KNOWN =
      Bench.KNOWN
          .withStock(BOARD, Zero.LEFT_FRONT_TOP)
          .withKeepOuts(List.of())
          .withTools(List.of(BIT, Bench.DRILL));
  private static final String START = "G17 G21 G90 G94 G53 G0 Z0\nT1 M6\nS16000 M3\nG0 Z5\n";
  private static final String END = "G0 Z5\nM5\nM2\n";

  /** The rectangle from 40, 30 to 120, 70 along the tool's axis. */
  private static final String AROUND =
      "G0 X40 Y30\nG1 Z-6.2 F400\nG1 X120 F1200\nG1 Y70\nG1 X40\nG1 Y30\nG0 Z5\n";

  private static List<Code> codes(DryRunResult result) {
    return result.findings().stream().map(Finding::code).toList();
  }

  @Test
  void a_piece_cut_all_around_comes_free_without_a_hold() {
    DryRunResult result = Bench.run(KNOWN, START + AROUND + END);
    assertThat(codes(result)).containsExactly(FindingCode.FREED_UNHELD);
    Finding finding = result.findings().get(0);
    assertThat(finding.line()).isEqualTo(10);
    // Inside the slot: 80 less a tool's width by 40 less a tool's width.
    double area = (80 - 6.35) * (40 - 6.35);
    assertThat(finding.amount().unit()).isEqualTo("mm2");
    assertThat(finding.amount().value()).isCloseTo(area, within(area * 0.01));
  }

  @Test
  void a_tab_holds_it() {
    String tab = AROUND.replace("G1 X40\n", "G1 X90\nG1 Z-4 F400\nG1 X75\nG1 Z-6.2\nG1 X40\n");
    assertThat(codes(Bench.run(KNOWN, START + tab + END))).isEmpty();
  }

  @Test
  void a_skin_holds_it() {
    assertThat(codes(Bench.run(KNOWN, START + AROUND.replace("Z-6.2", "Z-5.6") + END))).isEmpty();
  }

  @Test
  void cutting_a_piece_that_is_free_is_an_error() {
    String inside = "G0 X60 Y50\nG1 Z-2 F400\nG1 X90 F1200\nG0 Z5\n";
    DryRunResult late = Bench.run(KNOWN, START + AROUND + inside + END);
    assertThat(codes(late)).contains(FindingCode.FREED_EARLY);
    assertThat(late.mayWrite()).isFalse();
    DryRunResult early = Bench.run(KNOWN, START + inside + AROUND + END);
    assertThat(codes(early)).containsExactly(FindingCode.FREED_UNHELD);
    String outside = inside.replace("X60 Y50", "X150 Y50").replace("X90", "X170");
    assertThat(codes(Bench.run(KNOWN, START + AROUND + outside + END)))
        .containsExactly(FindingCode.FREED_UNHELD);
  }

  @Test
  void a_free_piece_stays_free_in_the_next_program() {
    String inside = "G0 X60 Y50\nG1 Z-2 F400\nG1 X90 F1200\n";
    DryRunResult result = Bench.run(KNOWN, START + AROUND + END, START + inside + END);
    assertThat(result.findings())
        .anyMatch(f -> f.code() == FindingCode.FREED_EARLY && f.program().equals("p2.nc"));
  }

  @Test
  void a_strip_too_thin_to_stand_is_a_warning() {
    // Two slots side by side: what stays between them is their distance less a tool's width.
    String two =
        """
        G0 X40 Y30
        G1 Z-6.2 F400
        G1 X120 F1200
        G0 Z5
        G0 X40 Y37.35
        G1 Z-6.2 F400
        G1 X120 F1200
        """;
    DryRunResult thin = Bench.run(KNOWN, START + two + END);
    assertThat(codes(thin)).containsExactly(FindingCode.THIN_STRIP);
    assertThat(thin.findings().get(0).amount().value()).isBetween(75.0, 90.0);
    DryRunResult wide = Bench.run(KNOWN, START + two.replace("Y37.35", "Y39.35") + END);
    assertThat(codes(wide)).isEmpty();
  }

  @Test
  void a_next_tool_needs_its_touch_off_spot() {
    Machine m = Bench.machine(false);
    Machine noChanger =
        new Machine(
            m.name(), m.post(), 780, 560, 120, m.x(), m.y(), m.z(), m.spindle(), false, false, 0);
    Surroundings known = KNOWN.withMachine(noChanger);
    String corner = "G0 X0 Y0\nG1 Z-1 F400\nG1 X30 F1200\n";
    String next =
        START.replace("T1", "T2").replace("S16000", "S9000") + "G0 X100 Y50\nG1 Z-6.2 F300\n" + END;
    DryRunResult cut = Bench.run(known, START + corner + END, next);
    assertThat(codes(cut)).containsExactly(FindingCode.TOUCH_OFF_CUT_AWAY);
    assertThat(cut.findings().get(0).program()).isEqualTo("p2.nc");
    assertThat(cut.findings().get(0).amount().value()).isCloseTo(1, within(1e-3));
    String away = corner.replace("X0 Y0", "X20 Y20").replace("X30", "X50");
    assertThat(codes(Bench.run(known, START + away + END, next))).isEmpty();
  }
}
