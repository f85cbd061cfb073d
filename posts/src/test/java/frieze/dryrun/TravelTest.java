package frieze.dryrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.dryrun.check.TravelCheck;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.NotChecked;
import frieze.dryrun.scene.FindingLog;
import frieze.dryrun.scene.Slack;
import frieze.dryrun.scene.Surroundings;
import frieze.motion.Executed.KnownAxes;
import frieze.motion.Executed.MachinePosition;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A machine with a travel of 780 x 560 x 120 mm. */
class TravelTest {
  private static final KnownAxes X = new KnownAxes(true, false, false);

  private final TravelCheck check = new TravelCheck(Bench.KNOWN);
  private final FindingLog log = Moves.log();

  private void adrift(int line, double... ends) {
    check.move(
        Moves.in(Bench.KNOWN).at(line).known(KnownAxes.NONE, KnownAxes.NONE).rapid(ends), log);
  }

  /** A move whose coordinates on the machine are those of the program. */
  private void onMachine(double... ends) {
    MachinePosition end =
        new MachinePosition(
            OptionalDouble.of(ends[3]), OptionalDouble.of(ends[4]), OptionalDouble.of(ends[5]));
    check.move(Moves.in(Bench.KNOWN).machine(end).rapid(ends), log);
  }

  private Finding only() {
    assertThat(log.findings()).hasSize(1);
    return log.findings().get(0);
  }

  @Test
  void increments_from_an_unknown_place_add_up() {
    adrift(1, 0, 0, 0, 500, 0, 0);
    adrift(2, 500, 0, 0, -280, 0, 0);
    assertThat(log.findings()).isEmpty();
    adrift(3, -280, 0, 0, -282, 0, 0);
    adrift(9, -282, 0, 0, -290, 0, 0);
    assertThat(only().line()).isEqualTo(3);
    assertThat(only().amount().value()).isCloseTo(2, within(1e-9));
    assertThat(only().message()).contains("X moves over 782 mm").contains("has 780 mm");
  }

  @Test
  void a_known_place_at_a_start_or_an_end_starts_the_count_again() {
    for (KnownAxes atStart : List.of(X, KnownAxes.NONE)) {
      KnownAxes atEnd = atStart == X ? KnownAxes.NONE : X;
      TravelCheck each = new TravelCheck(Bench.KNOWN);
      Moves nowhere = Moves.in(Bench.KNOWN).known(KnownAxes.NONE, KnownAxes.NONE);
      each.move(nowhere.rapid(0, 0, 0, 500, 0, 0), log);
      each.move(Moves.in(Bench.KNOWN).known(atStart, atEnd).rapid(0, 0, 0, 0, 0, 0), log);
      each.move(nowhere.rapid(-300, 0, 0, 0, 0, 0), log);
      assertThat(log.findings()).isEmpty();
    }
  }

  @Test
  void each_end_of_the_travel_counts_with_the_rounding_of_the_text() {
    onMachine(0, 0, -20, 780, 560, -120);
    onMachine(0, 0, -20, -Slack.LENGTH_MM, 560, Slack.LENGTH_MM);
    assertThat(log.findings()).isEmpty();
    onMachine(0, 0, -20, Math.nextDown(-Slack.LENGTH_MM), 0, -20);
    assertThat(only().amount().value()).isCloseTo(Slack.LENGTH_MM, within(1e-9));
  }

  @Test
  void the_worse_end_is_told() {
    onMachine(-20, 100, -20, 790, 100, -20);
    assertThat(only().amount().value()).isCloseTo(20, within(1e-9));
    assertThat(only().message()).contains("X reaches -20 mm").contains("from 0 to 780 mm");
  }

  @Test
  void the_other_end_is_told_if_it_is_worse() {
    onMachine(100, -20, -20, 100, 590, -20);
    assertThat(only().amount().value()).isCloseTo(30, within(1e-9));
    assertThat(only().message()).contains("Y reaches 590 mm").contains("from 0 to 560 mm");
  }

  /** In the program's own coordinates: 130 mm of height on a machine of 120. */
  @Test
  void a_height_that_no_zero_fits_names_the_first_lines_that_reach_its_ends() {
    check.move(Moves.in(Bench.KNOWN).at(3).rapid(0, 0, -20, 0, 0, 110), log);
    check.move(Moves.in(Bench.KNOWN).at(7).rapid(0, 0, 110, 0, 0, -20), log);
    check.finish(log);
    assertThat(only().line()).isEqualTo(3);
    assertThat(only().amount().value()).isCloseTo(10, within(1e-9));
    assertThat(only().message()).contains("Z goes from -20 mm (line 3) to 110 mm, 130 mm");
  }

  @Test
  void what_was_not_looked_at_is_said() {
    assertThat(new TravelCheck(Surroundings.UNKNOWN).notChecked())
        .extracting(NotChecked::what)
        .containsExactly("travel");
    assertThat(check.notChecked())
        .extracting(NotChecked::what)
        .containsExactly("place on the machine");
    onMachine(0, 0, -20, 10, 10, -20);
    assertThat(check.notChecked()).isEqualTo(List.of());
  }
}
