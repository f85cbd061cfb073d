package frieze.post;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.diagnostic.Diagnostic;
import frieze.lower.Capabilities;
import frieze.lower.FileNames;
import frieze.lower.Jobs;
import frieze.lower.Lowering;
import frieze.lower.Program;
import frieze.motion.Executed;
import frieze.motion.Motion;
import frieze.motion.Sequence;
import frieze.rs274.Interpreter;
import frieze.rs274.ProgramSummary;
import frieze.shop.Machine;
import frieze.shop.Setup;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * What every post must keep. A post's test extends this class and gives the post; everything else
 * follows from its capabilities. The texts are read back by an interpreter that shares no code with
 * any post.
 */
public abstract class PostContractTest {
  private static final int ARCS = 20_000;
  private static final int ARCS_SOAK = 1_000_000;
  private static final int ARCS_IN_A_PROGRAM = 20_000;
  private static final int SHORT = 60;
  private static final int EVERY_LINES_SHORT = 9;
  private static final int EVERY_LINES_LONG = 100;
  private static final double EXACT_MM = 1e-9;
  private static final double NO_LENGTH_MM = 1e-12;
  private static final Pattern CODE = Pattern.compile("[GM]\\d+(?:\\.\\d+)?");
  private static final String HOSTILE =
      "a)M3 S99999(\r\nG0 Z-50\n\"end\" ; M30 % 'q' \uD83C\uDF3F ünïcode \u2028 #1=2 [x] ~!?";

  /** The post under test. */
  protected abstract Post post();

  /** What a test does with a post on one machine. */
  private record Case(Machine machine, Sequence sequence, List<String> header) {}

  private List<Case> cases() {
    List<Case> cases = new ArrayList<>();
    Sequence work = Jobs.fitting(post().capabilities(), "front apron");
    for (boolean inches : new boolean[] {false, true}) {
      for (boolean byHand : new boolean[] {false, true}) {
        cases.add(
            new Case(
                Jobs.machine(byHand, !byHand, inches), work, List.of("Hall bench", "zero: left")));
      }
    }
    return cases;
  }

  private List<Program> lower(Case c) {
    Setup setup = Jobs.setup(c.machine());
    return Lowering.lower(
        c.sequence(),
        new Lowering.Request(
            setup,
            post().capabilities(),
            c.header(),
            new FileNames(post().capabilities().files())));
  }

  private List<ProgramText> texts(Case c) {
    return lower(c).stream().map(post()::write).toList();
  }

  /** What a text did, and what its reading came to. */
  private record Run(List<Executed> events, ProgramSummary summary) {
    List<Executed.Move> moves() {
      return events.stream()
          .filter(e -> e instanceof Executed.Move)
          .map(e -> (Executed.Move) e)
          .filter(m -> m.path().lengthMm() > NO_LENGTH_MM)
          .toList();
    }
  }

  private Run run(ProgramText text) {
    List<Executed> events = new ArrayList<>();
    ProgramSummary summary =
        Interpreter.run(text.fileName(), text.text(), post().reading(), events::add);
    assertThat(summary.diagnostics().stream().map(Diagnostic::toString).toList())
        .as("%s\n%s", post().id(), head(text))
        .isEmpty();
    return new Run(events, summary);
  }

  private static String head(ProgramText text) {
    return text.text().substring(0, Math.min(text.text().length(), 3_000));
  }

  @Test
  void the_controller_reads_what_was_lowered() {
    for (Case c : cases()) {
      for (Program program : lower(c)) {
        ProgramText text = post().write(program);
        List<ExpectedMove> expected = ExpectedMove.of(program);
        List<Executed.Move> done =
            run(text).moves().stream().filter(m -> m.toKnown().x() || m.toKnown().z()).toList();
        assertThat(done).as(head(text)).hasSameSizeAs(expected);
        for (int i = 0; i < done.size(); i++) {
          expected.get(i).compare(done.get(i), EXACT_MM, text);
        }
      }
    }
  }

  @Test
  void cuts_run_with_the_feed_asked_for_and_the_spindle_on() {
    boolean torch = post().capabilities().torch().present();
    for (Case c : cases()) {
      boolean turns = !c.machine().spindle().byHand() && post().capabilities().spindle();
      for (ProgramText text : texts(c)) {
        for (Executed.Move move : run(text).moves()) {
          if (move.kind() == Executed.Kind.FEED) {
            assertThat(move.feedMmPerMin()).as(head(text)).isPresent();
            assertThat(move.state().rotation() == Executed.Rotation.CLOCKWISE)
                .as(head(text))
                .isEqualTo(turns);
            assertThat(!torch || move.state().torchOn()).as(head(text)).isTrue();
          }
        }
      }
    }
  }

  @Test
  void nothing_travels_before_it_is_raised() {
    for (Case c : cases()) {
      double travel = Jobs.CLEARANCE_MM;
      for (ProgramText text : texts(c)) {
        boolean up = false;
        for (Executed event : run(text).events()) {
          if (event instanceof Executed.Stop stop && stop.message().startsWith("RAISE")) {
            up = true;
          } else if (event instanceof Executed.Move move) {
            boolean atTop =
                move.machineTo().z().isPresent() && move.machineTo().z().getAsDouble() == 0;
            boolean raise = atTop && !move.toKnown().z();
            assertThat(raise || up).as("raised before\n%s", head(text)).isTrue();
            up = true;
            boolean sideways =
                Math.abs(move.path().to().x() - move.path().from().x()) > NO_LENGTH_MM
                    || Math.abs(move.path().to().y() - move.path().from().y()) > NO_LENGTH_MM;
            if (move.kind() == Executed.Kind.RAPID && sideways && move.toKnown().z()) {
              assertThat(move.path().to().z())
                  .as("%s in\n%s", move.span(), head(text))
                  .isGreaterThanOrEqualTo(travel - 0.01);
            }
          }
        }
      }
    }
  }

  @Test
  void every_program_states_its_modes_and_ends_itself() {
    for (Case c : cases()) {
      for (ProgramText text : texts(c)) {
        Run run = run(text);
        assertThat(run.summary().unitWritten()).isTrue();
        assertThat(run.summary().ending()).isNotEqualTo(ProgramSummary.Ending.BROKEN_OFF);
        assertThat(text.inches()).isEqualTo(c.machine().inches());
        Executed last = run.events().get(run.events().size() - 1);
        assertThat(last).isInstanceOf(Executed.End.class);
        Executed.Move park = run.moves().get(run.moves().size() - 1);
        assertThat(park.kind()).isEqualTo(Executed.Kind.RAPID);
      }
    }
  }

  @Test
  void only_declared_codes_short_lines_and_plain_characters_are_written() {
    Capabilities has = post().capabilities();
    for (Case c : cases()) {
      for (ProgramText text : texts(c)) {
        String end = has.layout().crLf() ? "\r\n" : "\n";
        assertThat(text.text()).endsWith(end);
        String[] lines = text.text().split(end, -1);
        assertThat(text.origins()).hasSize(lines.length - 1);
        for (String line : lines) {
          assertThat(line.length()).as(line).isLessThanOrEqualTo(has.layout().maxLineLength());
          assertThat(line).matches("[ -~]*");
          codes(line).forEach(code -> assertThat(has.codes()).as(line).contains(code));
        }
      }
    }
  }

  private static List<String> codes(String line) {
    List<String> codes = new ArrayList<>();
    Matcher m = CODE.matcher(line.replaceAll("\\(.*\\)|;.*", ""));
    while (m.find()) {
      codes.add(m.group().replaceFirst("^([GM])0(\\d)", "$1$2"));
    }
    return codes;
  }

  @Test
  void the_same_program_gives_the_same_bytes_in_every_locale() {
    Locale before = Locale.getDefault();
    try {
      for (Case c : cases()) {
        Locale.setDefault(Locale.ROOT);
        List<ProgramText> plain = texts(c);
        for (String tag : List.of("de-DE", "tr-TR", "ar-EG")) {
          Locale.setDefault(Locale.forLanguageTag(tag));
          assertThat(texts(c)).as(tag).isEqualTo(plain);
        }
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void hostile_names_stay_in_their_comments() {
    for (boolean inches : new boolean[] {false, true}) {
      Machine machine = Jobs.machine(true, false, inches);
      Sequence plain = Jobs.fitting(post().capabilities(), "x");
      Sequence hostile = new Sequence(HOSTILE, plain.steps());
      List<ProgramText> calm = texts(new Case(machine, plain, List.of("x")));
      List<ProgramText> wild = texts(new Case(machine, hostile, List.of(HOSTILE, HOSTILE)));
      assertThat(wild).hasSameSizeAs(calm);
      for (int i = 0; i < wild.size(); i++) {
        List<Motion> moves = run(wild.get(i)).moves().stream().map(Executed.Move::path).toList();
        assertThat(moves)
            .isEqualTo(run(calm.get(i)).moves().stream().map(Executed.Move::path).toList());
        assertThat(wild.get(i).fileName()).matches("[A-Za-z0-9-]+\\.[A-Za-z0-9]+");
      }
    }
  }

  @Test
  void file_names_fit_and_sort_in_running_order() {
    Capabilities.Files files = post().capabilities().files();
    for (Case c : cases()) {
      List<String> names = texts(c).stream().map(ProgramText::fileName).toList();
      assertThat(names).isSorted().doesNotHaveDuplicates();
      for (String name : names) {
        assertThat(name).endsWith(files.extension());
        assertThat(name.length() - files.extension().length())
            .isLessThanOrEqualTo(files.maxNameLength());
      }
    }
  }

  @Test
  void golden_files_have_not_changed() {
    List<GoldenFiles.Golden> made = new ArrayList<>();
    for (Case c : cases()) {
      String folder =
          (c.machine().inches() ? "inch" : "mm")
              + (c.machine().spindle().byHand() ? "-by-hand" : "");
      for (ProgramText text : texts(c)) {
        made.add(new GoldenFiles.Golden(folder + "/" + text.fileName(), text.text()));
      }
    }
    new GoldenFiles(goldenFolder()).compare(made);
  }

  @Test
  void a_run_that_broke_off_is_rescued() {
    rescue(EVERY_LINES_SHORT, EVERY_LINES_LONG);
  }

  @Test
  @Tag("soak")
  void a_run_that_broke_off_anywhere_is_rescued() {
    rescue(1, 1);
  }

  private void rescue(int everyShort, int everyLong) {
    int tried = 0;
    int rescued = 0;
    boolean torch = post().capabilities().torch().present();
    for (Case c : cases()) {
      if (!torch && !post().capabilities().spindle() && !c.machine().spindle().byHand()) {
        continue; // The dry run would rightly miss a spindle that nobody starts.
      }
      BrokenRun run = new BrokenRun(post(), Jobs.setup(c.machine()), c.sequence());
      for (int program = 0; program < run.programs().size(); program++) {
        int lines = run.programs().get(program).origins().size();
        int step = lines < SHORT ? everyShort : everyLong;
        for (int line = 1; line <= lines; line += step) {
          tried++;
          rescued += run.rescuedFrom(program, line) ? 1 : 0;
        }
        assertThat(torch || run.isMissedWithoutRescue(program, lines / 2)).isTrue();
      }
    }
    System.out.printf(Locale.ROOT, "%s: %d lines tried, %d rescues%n", post().id(), tried, rescued);
    assertThat(rescued).isGreaterThan(tried / 2);
  }

  @Test
  void an_air_pass_takes_the_same_path_higher_and_cuts_nothing() {
    for (Case c : cases()) {
      AirRun air = new AirRun(post(), Jobs.setup(c.machine()), c.sequence());
      air.assertSamePath();
      air.assertNothingIsCut();
    }
  }

  /** Where the golden files of this post lie, below {@code src/test/resources}. */
  protected String goldenFolder() {
    return "golden/" + post().id();
  }

  @Test
  void random_arcs_are_accepted_at_the_tight_limit_and_stay_in_place() {
    arcs(ARCS);
  }

  @Test
  @Tag("soak")
  void a_million_random_arcs_are_accepted_at_the_tight_limit_and_stay_in_place() {
    arcs(ARCS_SOAK);
  }

  private void arcs(int count) {
    Stream.of(false, true).parallel().forEach(inches -> arcs(count, inches));
  }

  private void arcs(int count, boolean inches) {
    Machine machine = Jobs.machine(true, false, inches);
    double worst = 0;
    for (int from = 0; from < count; from += ARCS_IN_A_PROGRAM) {
      RandomArcs arcs =
          new RandomArcs(post().capabilities(), from, Math.min(ARCS_IN_A_PROGRAM, count - from));
      Program program = lower(new Case(machine, arcs.sequence(), List.of())).get(0);
      ProgramText text = post().write(program);
      worst = Math.max(worst, arcs.worstTicks(text, program.grid(), run(text).moves()));
    }
    System.out.printf(
        Locale.ROOT,
        "%s, %s: %d arcs, at most %.2f last digits off%n",
        post().id(),
        inches ? "inch" : "mm",
        count,
        worst);
    assertThat(worst).isPositive().isLessThan(RandomArcs.ALLOWED_TICKS);
  }

  /** The post that a name finds, for tests of built-in ones. */
  protected static Post builtIn(String id) {
    Optional<Post> post = Posts.find(id);
    return post.orElseThrow();
  }
}
