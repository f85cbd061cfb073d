package frieze.post;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.lower.FileNames;
import frieze.lower.Jobs;
import frieze.motion.Executed;
import frieze.motion.Executed.Kind;
import frieze.motion.Executed.Rotation;
import frieze.rs274.Interpreter;
import frieze.shop.Machine;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The safe shape of every built-in post's programs, seen from what their texts do. */
class SafeShapeTest {
  private static final double SPIN_UP_SECONDS = 3;

  static Stream<String> posts() {
    return Posts.all().stream().map(Post::id);
  }

  private static List<ProgramText> texts(Post post, Machine machine) {
    return Posting.write(
        Jobs.fitting(post.capabilities(), "front apron"),
        Jobs.setup(machine),
        post,
        List.of("Hall bench"),
        new FileNames(post.capabilities().files()));
  }

  private static List<Executed> events(Post post, ProgramText text) {
    List<Executed> events = new ArrayList<>();
    Interpreter.run(text.fileName(), text.text(), post.reading(), events::add);
    return events;
  }

  @ParameterizedTest
  @MethodSource("posts")
  void the_start_states_units_plane_distance_feed_mode_and_offset(String id) {
    Post post = Posts.find(id).orElseThrow();
    for (ProgramText text : texts(post, Jobs.machine(true, false, false))) {
      List<String> lines =
          text.text().lines().filter(l -> !l.startsWith("(") && !l.startsWith("%")).toList();
      String start =
          String.join(
              " ", lines.stream().takeWhile(l -> !l.matches(".*\\b(G0|M0|G00|M00)\\b.*")).toList());
      for (String code : List.of("G21", "G17", "G90", "G94", "G54")) {
        if (post.capabilities().codes().contains(code)) {
          assertThat(List.of(start.split(" "))).as(text.text()).contains(code);
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("posts")
  void the_spindle_has_its_time_before_the_first_cut_and_is_off_at_the_end(String id) {
    Post post = Posts.find(id).orElseThrow();
    if (post.capabilities().torch().present()) {
      return;
    }
    boolean drives = post.capabilities().spindle();
    for (boolean byHand : new boolean[] {true, false}) {
      for (ProgramText text : texts(post, Jobs.machine(byHand, !byHand, false))) {
        if (drives && !byHand) {
          assertDriven(events(post, text), text);
        } else {
          assertByHand(events(post, text), text);
        }
      }
    }
  }

  private static void assertDriven(List<Executed> events, ProgramText text) {
    double waited = 0;
    boolean on = false;
    for (Executed event : events) {
      if (event instanceof Executed.SpindleChange change) {
        on = change.rotation() == Rotation.CLOCKWISE;
        waited = 0;
      } else if (event instanceof Executed.Dwell dwell && on) {
        waited += dwell.seconds();
      } else if (event instanceof Executed.Move move && move.kind() == Kind.FEED) {
        assertThat(on).as(text.text()).isTrue();
        assertThat(waited).as(text.text()).isGreaterThanOrEqualTo(SPIN_UP_SECONDS);
      }
    }
    assertThat(on).as(text.text()).isFalse();
  }

  private static void assertByHand(List<Executed> events, ProgramText text) {
    boolean asked = false;
    boolean off = false;
    for (Executed event : events) {
      if (event instanceof Executed.Stop stop) {
        asked |= stop.message().contains("START") && text.text().contains("SPINDLE ON, DIAL AT");
        off = stop.message().contains("OFF");
      } else if (event instanceof Executed.Move move && move.kind() == Kind.FEED) {
        assertThat(asked).as(text.text()).isTrue();
      }
    }
    assertThat(off).as(text.text()).isTrue();
  }

  /** M1 waits only if the operator has switched optional stops on (NISTIR 6556, 3.6.1). */
  @ParameterizedTest
  @MethodSource("posts")
  void a_changer_comes_after_an_optional_stop(String id) {
    Post post = Posts.find(id).orElseThrow();
    for (ProgramText text : texts(post, Jobs.machine(false, true, false))) {
      Executed before = null;
      for (Executed event : events(post, text)) {
        if (event instanceof Executed.ToolChange) {
          assertThat(before).as(text.text()).isInstanceOf(Executed.Stop.class);
          assertThat(((Executed.Stop) before).optional()).isTrue();
        }
        before = event;
      }
    }
  }
}
