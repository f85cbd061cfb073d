package frieze.job;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.FindingCode;
import frieze.fixtures.Seeds;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Edges and border lines of outlines with notches, horns and round places, by chance. */
class EdgeOutlinesTest {
  private static final int ROUNDS = Integer.getInteger("frieze.outlines", 3);

  /** Seeded: whatever the outline, the dry run finds nothing that was cut too deep, or left. */
  @Test
  void edges_and_lines_of_any_outline_are_as_asked() {
    long seed = Seeds.seed(20263);
    SplittableRandom random = new SplittableRandom(seed);
    for (int round = 0; round < ROUNDS; round++) {
      String d = outline(random);
      String work = edge(random);
      String job =
          """
          job: Any
          units: mm
          panels:
            front:
              outline: {file: edge.svg}
              stock: {material: white ash, length: 120, width: 80, thickness: 12}
              border lines:
                rim: {inset: %s}
              work:
                - groove: {on: rim, tool: vee 60, depth: 0.8}
                - %s
          """
              .formatted(number(4.5 + 3 * random.nextDouble()), work);
      MemoryFiles files =
          new MemoryFiles()
              .with("job.yaml", job)
              .with(
                  "edge.svg",
                  "<svg xmlns='http://www.w3.org/2000/svg' width='120mm' height='80mm'"
                      + " viewBox='0 0 120 80'><path fill='none' stroke='black' d='"
                      + d
                      + "'/></svg>");
      assertThat(Traced.of(files).findings())
          .as("seed %s, round %s: %s with %s", seed, round, d, work)
          .isEmpty();
    }
  }

  /** The bit comes down beside a blank, never farther than its radius: also where an edge leans. */
  @Test
  void a_bit_comes_to_a_blank_with_an_arch_within_its_radius() {
    String job =
        """
        job: Arch
        units: mm
        panels:
          front:
            size: {width: 300, height: 100, arched bottom: 18}
            stock: {material: white ash, length: 300, width: 100, thickness: 12, blank: yes}
            work:
              - roundover: {tool: round over 1/4}
        """;
    assertThat(Traced.of(new MemoryFiles().with("job.yaml", job)).findings())
        .extracting(Finding::code)
        .containsOnly(FindingCode.OVER_STOCK_EDGE);
  }

  /** A board of 80 by 44 with something done to the middles of its long sides and its corners. */
  private static String outline(SplittableRandom random) {
    String corner = corner(random);
    return "M20 10"
        + side(random, 1)
        + " H"
        + (90 - 6)
        + corner
        + " V48 l-6 6"
        + side(random, -1)
        + " H16 L10 48 V16 L16 10Z";
  }

  private static String corner(SplittableRandom random) {
    double r = 6;
    return switch (random.nextInt(3)) {
      case 0 -> " H90 V16";
      case 1 -> " a" + number(r) + " " + number(r) + " 0 0 1 6 6";
      default -> " a" + number(r) + " " + number(r) + " 0 0 0 6 6";
    };
  }

  /** A feature on a side that runs right, or left along the other long side. */
  private static String side(SplittableRandom random, int way) {
    double at = way > 0 ? 35 + 20 * random.nextDouble() : 65 - 20 * random.nextDouble();
    double w = 1 + 12 * random.nextDouble();
    double h = 1 + 9 * random.nextDouble();
    String go = " H" + number(at);
    String right = number(way * w);
    String in = number(way * h);
    String back = number(-way * h);
    String half = number(w / 2);
    return go
        + switch (random.nextInt(5)) {
          case 0 -> " v" + in + " h" + right + " v" + back;
          case 1 -> " v" + back + " h" + right + " v" + in;
          case 2 -> " a" + half + " " + half + " 0 0 0 " + right + " 0";
          case 3 -> " l" + number(way * w / 2) + " " + in + " l" + number(way * w / 2) + " " + back;
          default -> " c0 " + in + " " + right + " " + in + " " + right + " 0";
        };
  }

  private static String edge(SplittableRandom random) {
    List<String> sides = List.of("", ", sides: top", ", sides: [left, bottom]", ", sides: right");
    String on = sides.get(random.nextInt(sides.size()));
    double width = 0.8 + 2.4 * random.nextDouble();
    return switch (random.nextInt(3)) {
      case 0 -> "chamfer: {tool: vee 90, width: " + number(width) + on + "}";
      case 1 -> "chamfer: {tool: vee 60, width: " + number(width) + ", below: 0" + on + "}";
      default -> "roundover: {tool: round over 1/8" + on + "}";
    };
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.3f", value);
  }
}
