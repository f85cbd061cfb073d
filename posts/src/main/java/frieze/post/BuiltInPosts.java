package frieze.post;

import frieze.lower.Capabilities;
import frieze.lower.Capabilities.ArcFormat;
import frieze.lower.Capabilities.CommentForm;
import frieze.lower.Capabilities.DwellWord;
import frieze.lower.Capabilities.ToolChanging;
import frieze.lower.Program;
import frieze.motion.Plane;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The posts that come with Frieze, named by what their controllers understand. */
public final class BuiltInPosts {
  private BuiltInPosts() {}

  /** A built-in post: its dialect, and nothing else. */
  private abstract static class BuiltIn implements Post {
    private final DialectPost post;

    BuiltIn(Dialect dialect) {
      this.post = new DialectPost(dialect);
    }

    @Override
    public final String id() {
      return post.id();
    }

    @Override
    public final String summary() {
      return post.summary();
    }

    @Override
    public final Capabilities capabilities() {
      return post.capabilities();
    }

    @Override
    public final ProgramText write(Program program) {
      return post.write(program);
    }
  }

  /** The whole language of NISTIR 6556. */
  public static final class Rs274Full extends BuiltIn {
    public Rs274Full() {
      super(rs274Full());
    }
  }

  /** Lines and arcs, one file for each tool. */
  public static final class ShortArcs extends BuiltIn {
    public ShortArcs() {
      super(shortArcs());
    }
  }

  private static Dialect rs274Full() {
    return new Dialect(
        "rs274-full",
        "Controllers that read the whole language of NISTIR 6556 and find their home.",
        new Capabilities(
            Set.of(
                "G0", "G1", "G2", "G3", "G4", "G17", "G18", "G19", "G20", "G21", "G38.2", "G40",
                "G43", "G49", "G53", "G54", "G80", "G81", "G82", "G83", "G90", "G94", "G98", "G99",
                "M0", "M1", "M2", "M3", "M5", "M6", "M30"),
            new Capabilities.Arcs(
                ArcFormat.CENTRE, EnumSet.allOf(Plane.class), true, true, 0.01, 100_000),
            EnumSet.allOf(Capabilities.Cycle.class),
            ToolChanging.CHANGER,
            new Capabilities.Coordinates(true, true, true),
            DwellWord.P_SECONDS,
            true,
            Capabilities.Torch.NONE,
            new Capabilities.Numbers(3, 5, false),
            new Capabilities.Layout(CommentForm.PARENTHESES, 256, false, false, false, false),
            new Capabilities.Files(60, ".nc", false, Long.MAX_VALUE)),
        Map.of(
            Moment.START, List.of("{units} G17 G90 G94", "G40 G49 G80 G54"),
            Moment.RAISE, List.of("G53 G0 Z0"),
            Moment.TOOL_CHANGE, List.of("T{tool} M6", "G43 H{tool}"),
            Moment.SPINDLE_ON, List.of("S{rpm} M3"),
            Moment.SPINDLE_OFF, List.of("M5"),
            Moment.STOP, List.of("{message}", "M0"),
            Moment.END, List.of("M2")));
  }

  private static Dialect shortArcs() {
    return new Dialect(
        "short-arcs",
        "Small controllers with lines, arcs and dwell: no cycles, no tool change, short lines.",
        new Capabilities(
            Set.of(
                "G0", "G1", "G2", "G3", "G4", "G17", "G18", "G19", "G20", "G21", "G54", "G90",
                "G94", "M0", "M2", "M3", "M5"),
            new Capabilities.Arcs(ArcFormat.CENTRE, EnumSet.of(Plane.XY), true, false, 0.1, 2_000),
            Set.of(),
            ToolChanging.SEPARATE_PROGRAMS,
            new Capabilities.Coordinates(false, true, false),
            DwellWord.P_SECONDS,
            true,
            Capabilities.Torch.NONE,
            new Capabilities.Numbers(3, 5, false),
            new Capabilities.Layout(CommentForm.PARENTHESES, 70, false, false, false, false),
            new Capabilities.Files(30, ".nc", false, Long.MAX_VALUE)),
        Map.of(
            Moment.START, List.of("{units} G17 G90 G94 G54"),
            Moment.SPINDLE_ON, List.of("S{rpm} M3"),
            Moment.SPINDLE_OFF, List.of("M5"),
            Moment.STOP, List.of("{message}", "M0"),
            Moment.END, List.of("M2")));
  }
}
