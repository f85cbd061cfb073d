package frieze.rs274;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import frieze.fixtures.Seeds;
import frieze.motion.Executed;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Programs with slips in them: whatever is changed, there is a summary and never an exception. */
class MutationFuzzTest {
  private static final long SEED = 20260105;

  private static final List<String> GOOD =
      List.of(
          """
          %
          N10 G21 G90 G17 G40 G49 G54 G80 G94
          N20 T3 M6 (flat 6)
          N30 S18000 M3
          N40 G4 P2
          N50 G0 X10.5 Y-3.25 Z5
          N60 G1 Z-1.5 F300
          N70 G1 X40 F1200
          N80 G3 X50 Y6.75 I0 J10 Z-2
          N90 G2 X40 Y16.75 R10
          N100 G0 Z5
          N110 M5
          N120 M30
          %
          """,
          """
          G20 G90
          #1=0.5 #2=[#1*2]
          G0 X#1 Y[#2+1] Z1
          F20 S500 M3
          G99 G83 X1 Y2 Z-1 R0.2 Q0.25
          G91 X1 L3
          G80
          G90 G92 X0
          G10 L2 P2 X[1.5]
          G55 G0 X1
          G92.1
          G53 G0 Z0
          G43 H2 G0 Z1
          G38.2 Z-1
          G28
          M2
          """,
          """
          G21 G91 G18 F100
          G93 G2 X5 Z5 I5 F4
          G94 G19 G3 Y5 Z5 J5
          G17 G87 X1 Y1 Z-2 R0.5 I0.5 J0 K1
          G61 M7 M48
          (MSG, turn the panel)
          M0
          #3=ATAN[1]/[2] #4=SQRT[ABS[-2]]
          /G0 X1
          M1
          """);

  private static final String TOKENS = "GXYZIJKRFSTMNPQLHD#[]()*/+-.0123456789 %;=\n\rEO\t\u0000é";

  private static final List<String> WORDS =
      List.of(
          "G41",
          "G20",
          "G91",
          "G93",
          "M3",
          "M2",
          "G80",
          "L9999999",
          "#5221=1",
          "[",
          "-",
          "R-5",
          "G92 X1",
          "G28",
          "1e9",
          "99999999999999999999",
          "SIN[",
          "**",
          "G53",
          "Z-1000000",
          "%");

  private static String mutate(String text, SplittableRandom random) {
    StringBuilder b = new StringBuilder(text);
    int changes = 1 + random.nextInt(6);
    for (int i = 0; i < changes && b.length() > 1; i++) {
      int at = random.nextInt(b.length());
      switch (random.nextInt(6)) {
        case 0 -> b.deleteCharAt(at);
        case 1 -> b.setCharAt(at, TOKENS.charAt(random.nextInt(TOKENS.length())));
        case 2 -> b.insert(at, TOKENS.charAt(random.nextInt(TOKENS.length())));
        case 3 -> b.insert(at, WORDS.get(random.nextInt(WORDS.size())));
        case 4 -> b.delete(at, Math.min(b.length(), at + 1 + random.nextInt(12)));
        default -> {
          int to = Math.min(b.length(), at + 1 + random.nextInt(20));
          b.insert(random.nextInt(b.length()), b.substring(at, to));
        }
      }
    }
    return b.toString();
  }

  private static void fuzz(int rounds) {
    long seed = Seeds.seed(SEED);
    SplittableRandom random = new SplittableRandom(seed);
    ReadingRules[] rules = {
      ReadingRules.REPORT,
      Programs.ZEROED,
      ReadingRules.REPORT
          .but()
          .maxLineLength(0)
          .semicolonComments(true)
          .programNumbers(true)
          .torch(3, 5)
          .extraLetters("E")
          .probeEnd(ReadingRules.ProbeEnd.PROGRAMMED_POINT)
          .dwell(ReadingRules.DwellWord.X_SECONDS)
          .build()
    };
    for (int round = 0; round < rounds; round++) {
      String text = mutate(GOOD.get(random.nextInt(GOOD.size())), random);
      ReadingRules rule = rules[random.nextInt(rules.length)];
      try {
        check(text, rule);
      } catch (RuntimeException | StackOverflowError | AssertionError e) {
        fail("seed " + seed + " round " + round + ":\n" + text, e);
      }
    }
  }

  private static void check(String text, ReadingRules rules) {
    List<Executed> events = new ArrayList<>();
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    ProgramSummary summary = Interpreter.run("fuzz.nc", bytes, rules, e -> keep(events, e));
    int lines = summary.lines();
    summary
        .diagnostics()
        .forEach(d -> assertThat(d.where().line()).isBetween(0, Math.max(1, lines)));
    Executed.Move before = null;
    for (Executed event : events) {
      assertThat(event.span().line()).isBetween(0, lines);
      if (event instanceof Executed.Move move) {
        assertThat(move.path().lengthMm()).isNotNegative().isFinite();
        if (before != null && before.toKnown().equals(Executed.KnownAxes.ALL)) {
          assertThat(move.path().from().x()).isEqualTo(before.path().to().x());
          assertThat(move.path().from().y()).isEqualTo(before.path().to().y());
        }
        before = move;
      }
    }
    // The same bytes give the same events.
    List<Executed> again = new ArrayList<>();
    ProgramSummary second = Interpreter.run("fuzz.nc", bytes, rules, e -> keep(again, e));
    assertThat(second).isEqualTo(summary);
    assertThat(again).isEqualTo(events);
  }

  private static void keep(List<Executed> events, Executed event) {
    if (events.size() < 2000) {
      events.add(event);
    }
  }

  @Test
  void the_programs_are_good_before_they_are_changed() {
    for (String text : GOOD) {
      assertThat(Programs.run(Programs.ZEROED, text).errors()).isEmpty();
    }
  }

  @Test
  void two_hundred_changed_programs_give_summaries() {
    fuzz(200);
  }

  @Test
  @Tag("soak")
  void ten_thousand_changed_programs_give_summaries() {
    fuzz(10_000);
  }
}
