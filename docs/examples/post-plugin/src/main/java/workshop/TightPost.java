package workshop;

import frieze.lower.Capabilities;
import frieze.lower.Command;
import frieze.lower.Program;
import frieze.motion.Plane;
import frieze.post.NumberText;
import frieze.post.Post;
import frieze.post.ProgramText;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Writes for a controller that wants no blanks between words, and each feed on a line of its own.
 *
 * <p>It knows lines, arcs in XY and a stop; the operator switches the spindle.
 */
public final class TightPost implements Post {
  private static final Capabilities CAPABILITIES =
      new Capabilities(
          Set.of("G0", "G1", "G2", "G3", "G17", "G20", "G21", "G90", "G94", "M0", "M2"),
          new Capabilities.Arcs(
              Capabilities.ArcFormat.CENTRE, Set.of(Plane.XY), false, false, 0.5, 1_000),
          Set.of(),
          Capabilities.ToolChanging.SEPARATE_PROGRAMS,
          new Capabilities.Coordinates(false, false, false),
          Capabilities.DwellWord.NONE,
          false,
          Capabilities.Torch.NONE,
          new Capabilities.Numbers(3, 4, false),
          new Capabilities.Layout(
              Capabilities.CommentForm.PARENTHESES, 72, false, false, false, false, false),
          new Capabilities.Files(8, ".TXT", true, 1_000_000));

  /** A post needs a public constructor without parameters. */
  public TightPost() {}

  @Override
  public String id() {
    return "tight-lines";
  }

  @Override
  public String summary() {
    return "An example: lines and half circles, no blanks, each feed on its own line.";
  }

  @Override
  public Capabilities capabilities() {
    return CAPABILITIES;
  }

  @Override
  public ProgramText write(Program program) {
    Writer writer = new Writer(program);
    program.header().forEach(writer::comment);
    writer.line(program.grid().inches() ? "G20G17G90G94" : "G21G17G90G94");
    for (Program.Entry entry : program.entries()) {
      writer.origin = entry.origin();
      entry.command().accept(writer);
    }
    writer.origin = "";
    writer.line("M2");
    return new ProgramText(
        program.fileName(),
        program.tools(),
        program.grid().inches(),
        program.touchSpots(),
        writer.text.toString(),
        writer.origins);
  }

  /** Writes one command after the other. What the capabilities deny never arrives here. */
  private static final class Writer implements Command.Visitor<Boolean> {
    private static final int ROOM_FOR_COMMENT = 70;

    private final StringBuilder text = new StringBuilder();
    private final List<String> origins = new ArrayList<>();
    private final int decimals;
    private final int feedDecimals;
    private String origin = "";
    private long feed;

    Writer(Program program) {
      this.decimals = program.grid().decimals();
      this.feedDecimals = program.feedGrid().decimals();
    }

    private boolean line(String words) {
      text.append(words).append('\n');
      return origins.add(origin);
    }

    /** Only letters, digits and a few signs: no name can leave its comment; what is long goes on. */
    private boolean comment(String words) {
      String plain = words.replaceAll("[^A-Za-z0-9 .,:/-]+", " ").strip();
      for (int from = 0; from < plain.length(); from += ROOM_FOR_COMMENT) {
        int to = Math.min(plain.length(), from + ROOM_FOR_COMMENT);
        line("(" + plain.substring(from, to) + ")");
      }
      return true;
    }

    private String number(String letter, long ticks, int digits) {
      StringBuilder word = new StringBuilder(letter);
      NumberText.append(word, ticks, digits, false);
      return word.toString();
    }

    private String at(long x, long y, long z) {
      return number("X", x, decimals) + number("Y", y, decimals) + number("Z", z, decimals);
    }

    private void feed(long wanted) {
      if (feed != wanted) {
        line(number("F", wanted, feedDecimals));
        feed = wanted;
      }
    }

    @Override
    public Boolean rapidXy(Command.RapidXy rapid) {
      return line("G0" + number("X", rapid.x(), decimals) + number("Y", rapid.y(), decimals));
    }

    @Override
    public Boolean rapidZ(Command.RapidZ rapid) {
      return line("G0" + number("Z", rapid.z(), decimals));
    }

    @Override
    public Boolean line(Command.Line to) {
      feed(to.feed());
      return line("G1" + at(to.x(), to.y(), to.z()));
    }

    @Override
    public Boolean arc(Command.Arc arc) {
      feed(arc.feed());
      return line(
          (arc.clockwise() ? "G2" : "G3")
              + at(arc.x(), arc.y(), arc.z())
              + number("I", arc.offsetU(), decimals)
              + number("J", arc.offsetV(), decimals));
    }

    @Override
    public Boolean stop(Command.Stop stop) {
      comment(stop.message());
      return line("M0");
    }

    @Override
    public Boolean remark(Command.Remark remark) {
      return comment(remark.text());
    }

    @Override
    public Boolean raise(Command.Raise raise) {
      return never(raise);
    }

    @Override
    public Boolean drill(Command.Drill drill) {
      return never(drill);
    }

    @Override
    public Boolean toolChange(Command.ToolChange change) {
      return never(change);
    }

    @Override
    public Boolean spindleOn(Command.SpindleOn on) {
      return never(on);
    }

    @Override
    public Boolean spindleOff(Command.SpindleOff off) {
      return never(off);
    }

    @Override
    public Boolean dwell(Command.Dwell dwell) {
      return never(dwell);
    }

    @Override
    public Boolean probe(Command.Probe probe) {
      return never(probe);
    }

    @Override
    public Boolean torch(Command.Torch torch) {
      return never(torch);
    }

    @Override
    public Boolean heightControl(Command.HeightControl control) {
      return never(control);
    }

    private static boolean never(Command command) {
      throw new IllegalStateException("not lowered for this controller: " + command);
    }
  }
}
