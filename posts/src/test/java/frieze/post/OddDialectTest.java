package frieze.post;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.curve.Point;
import frieze.lower.Capabilities;
import frieze.lower.FileNames;
import frieze.lower.Jobs;
import frieze.lower.Lowering;
import frieze.lower.Program;
import frieze.shop.Setup;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A dialect of what the built-in ones leave out, held to the same contract. */
class OddDialectTest extends PostContractTest {
  private static final String FILE =
      """
      post: odd
      suits: Nobody; it has all that the built-in posts have not.
      codes: G0 G1 G2 G3 G4 G17 G20 G21 G54 G80 G81 G82 G83 G90 G94 G98 G99 M0 M2 M3 M5 M7 M9 M64
      arcs: {format: radius, smallest radius: 1 mm, largest radius: 500 mm}
      tool change: stop
      dwell: P milliseconds
      spindle: by program
      numbers: {mm: 4, inch: 5}
      lines: {longest: 64, comments: semicolon, numbered: yes, words: always, end: crlf}
      files: {name: 8, ending: .TAP, capitals: yes, largest kib: 900}
      write:
        start: ["{units} G90 G94", "G17 G54"]
        dust on: M7
        dust off: M9
        spindle on: [M64, "S{rpm} M3"]
        spindle off: M5
        stop: ["{message}", M0]
        end: M2
      """;

  @Override
  protected Post post() {
    return DialectFile.read("odd.yaml", FILE);
  }

  @Test
  void z_is_found_again_on_a_spot_that_is_uncut() {
    Setup setup = Jobs.setup(Jobs.machine(true, false, false));
    Capabilities has = post().capabilities();
    List<Program> programs =
        Lowering.lower(
            Jobs.leafAndRecess("front apron"),
            new Lowering.Request(setup, has, List.of(), new FileNames(has.files())));

    assertThat(programs).hasSize(1);
    Point spot = programs.get(0).touchSpots().get(0);
    assertThat(spot.distance(new Point(100, 75))).isGreaterThan(18.123 + Jobs.FLAT.radiusMm());
    assertThat(spot.x()).isBetween(0.0, setup.stock().lengthMm());
    assertThat(spot.y()).isBetween(0.0, setup.stock().widthMm());
    assertThat(post().write(programs.get(0)).text())
        .contains("; CHANGE TO TOOL 2, flat 1/8. FIND Z ZERO HERE, THEN START");
  }
}
