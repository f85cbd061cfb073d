package frieze.dryrun;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.dryrun.check.FreePieceCheck;
import frieze.dryrun.finding.Amount;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.finding.NotChecked;
import frieze.dryrun.scene.Surroundings;
import frieze.shop.Stock;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import frieze.shop.Zero;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A board of 60 x 40 x 6 mm in cells of half a millimetre, and a bit of 2 mm. */
class FreePieceTest {
  private static final Tool BIT =
      new Tool(
          "bit",
          1,
          new ToolShape.Flat(2),
          2,
          22,
          32,
          true,
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          20000,
          2000,
          400);
  private static final Surroundings KNOWN =
      Surroundings.UNKNOWN
          .withStock(
              new Stock(Bench.STOCK.material(), 60, 40, List.of(6.0), false), Zero.LEFT_FRONT_TOP)
          .withTools(List.of(BIT));
  private static final String START = "G21 G90 G94 F900\nS16000 M3\nG0 Z5\n";

  private static List<Finding> freed(String... texts) {
    List<ProgramText> programs = new java.util.ArrayList<>();
    for (String text : texts) {
      programs.add(Bench.program("p" + programs.size() + ".nc", START + text + "M2\n"));
    }
    return DryRun.in(KNOWN).withCell(0.5).run(programs).findings().stream()
        .filter(f -> f.code() == FindingCode.FREED_EARLY || f.code() == FindingCode.FREED_UNHELD)
        .toList();
  }

  /** Lines 4 to 10: around a piece with the given corners. */
  private static String around(double x0, double y0, double x1, double y1) {
    return around(x0, y0, x1, y1, -6.2) + "G0 Z5\n";
  }

  private static String around(double x0, double y0, double x1, double y1, double z) {
    return "G0 X%s Y%s\nG1 Z%s\nG1 X%s\nG1 Y%s\nG1 X%s\nG1 Y%s\n"
        .formatted(x0 - 1, y0 - 1, z, x1 + 1, y1 + 1, x0 - 1, y0 - 1);
  }

  @Test
  void a_piece_of_a_square_centimetre_is_told_and_a_smaller_one_not() {
    Finding finding = freed(around(10, 10, 20, 20)).get(0);
    assertThat(finding.code()).isEqualTo(FindingCode.FREED_UNHELD);
    assertThat(finding.amount()).isEqualTo(new Amount(100, "mm2"));
    assertThat(finding.line()).isEqualTo(9);
    assertThat(freed(around(10, 10, 20, 19.5))).isEmpty();
    String inside = "G0 X15 Y15\nG1 Z-2\nG1 X16\nG0 Z5\n";
    assertThat(freed(around(10, 10, 20, 19.5) + inside)).isEmpty();
    assertThat(freed(around(10, 10, 20, 20) + inside))
        .extracting(Finding::code)
        .containsExactly(FindingCode.FREED_UNHELD, FindingCode.FREED_EARLY);
  }

  @Test
  void each_piece_is_told_once_with_the_cut_that_frees_it() {
    List<Finding> found = freed(around(10, 10, 20, 20) + around(30, 10, 42, 20));
    assertThat(found).extracting(f -> f.amount().value()).containsExactly(100.0, 120.0);
    assertThat(found).extracting(Finding::line).containsExactly(9, 16);
    List<Finding> apart = freed(around(10, 10, 20, 20), around(30, 10, 42, 20));
    assertThat(apart).extracting(Finding::program).containsExactly("p0.nc", "p1.nc");
  }

  @Test
  void a_cut_as_deep_as_the_board_goes_through() {
    assertThat(freed(around(10, 10, 20, 20, -6) + "G0 Z5\n")).hasSize(1);
    assertThat(freed(around(10, 10, 20, 20, -5.9) + "G0 Z5\n")).isEmpty();
  }

  @Test
  void a_piece_at_the_edge_of_the_board_is_held() {
    assertThat(freed(around(0, 10, 20, 20))).isEmpty();
  }

  /** Some programs lift the tool and travel at feed. */
  @Test
  void a_program_that_travels_at_feed_is_seen_to_cut_a_free_piece() {
    String atFeed = around(10, 10, 20, 20, -6.2) + "G1 Z5\nG1 X15 Y15\nG1 Z-2\nG1 X16\nG1 Z5\n";
    assertThat(freed(atFeed))
        .extracting(Finding::code)
        .containsExactly(FindingCode.FREED_UNHELD, FindingCode.FREED_EARLY);
    String rapid = around(10, 10, 20, 20, -6.2) + "G1 Z5\nG0 X15 Y15\nG1 Z-2\nG1 X16\nG1 Z5\n";
    assertThat(freed(rapid))
        .extracting(Finding::code)
        .containsExactly(FindingCode.FREED_UNHELD, FindingCode.FREED_EARLY);
  }

  /** The text ends without a rapid that lifts the tool. */
  @Test
  void a_piece_freed_by_the_last_cut_is_seen_at_the_end() {
    assertThat(freed(around(10, 10, 20, 20, -6.2))).hasSize(1);
  }

  @Test
  void passing_over_a_free_piece_is_no_cut() {
    String above = "G1 Z1\nG1 X15 Y15\nG1 X17\nG0 Z5\n";
    assertThat(freed(around(10, 10, 20, 20) + above)).hasSize(1);
    String inTheSlot = "G0 X9 Y9\nG1 Z-6.2\nG1 X15\nG0 Z5\n";
    assertThat(freed(around(10, 10, 20, 20) + inTheSlot)).hasSize(1);
    String beside = "G0 X40 Y15\nG1 Z-2\nG1 X42\nG0 Z5\n";
    assertThat(freed(around(10, 10, 20, 20) + beside)).hasSize(1);
  }

  /** Forty cuts through the same slot use up the looks, so that a free piece is seen at the end. */
  @Test
  void after_forty_looks_only_the_end_is_looked_at() {
    String slot = "G0 X50 Y30\nG1 Z-6.2\nG1 X52\nG0 Z5\n";
    String inside = "G0 X15 Y15\nG1 Z-2\nG1 X16\nG0 Z5\n";
    String rest = around(10, 10, 20, 20) + inside;
    assertThat(freed(slot.repeat(FreePieceCheck.MOST_LOOKS - 1) + rest))
        .extracting(Finding::code)
        .containsExactly(FindingCode.FREED_UNHELD, FindingCode.FREED_EARLY);
    assertThat(freed(slot.repeat(FreePieceCheck.MOST_LOOKS) + rest))
        .extracting(Finding::code)
        .containsExactly(FindingCode.FREED_UNHELD);
  }

  @Test
  void without_the_stock_it_says_so() {
    assertThat(new FreePieceCheck(Surroundings.UNKNOWN, java.util.Optional.empty()).notChecked())
        .extracting(NotChecked::what)
        .containsExactly("pieces that come free");
  }
}
