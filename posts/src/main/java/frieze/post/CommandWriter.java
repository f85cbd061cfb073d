package frieze.post;

import frieze.lower.Capabilities;
import frieze.lower.Command;
import frieze.lower.Program;
import frieze.motion.Plane;
import java.util.Arrays;
import java.util.Map;

/** Writes the commands of one program, remembering what is in force. */
final class CommandWriter implements Command.Visitor<Void> {
  private static final String AXES = "XYZ";
  private static final String OFFSETS = "IJK";

  private final Dialect dialect;
  private final Capabilities capabilities;
  private final Program program;
  private final LineWriter lines;
  private final Words words;
  private final Modal modal = new Modal();

  CommandWriter(Dialect dialect, Program program, LineWriter lines) {
    this.dialect = dialect;
    this.capabilities = dialect.capabilities();
    this.program = program;
    this.lines = lines;
    this.words = new Words(capabilities, program.grid(), program.feedGrid());
  }

  void start() {
    if (capabilities.layout().percentLines()) {
      lines.bare("%");
    }
    program.header().forEach(lines::comment);
    String units = program.grid().inches() ? "G20" : "G21";
    own(Moment.START, Map.of("units", units));
  }

  void end() {
    own(Moment.END, Map.of());
    if (capabilities.layout().percentLines()) {
      lines.bare("%");
    }
  }

  /** Writes the dialect's own lines for a moment. */
  @SuppressWarnings("NullAway") // Void has no other value.
  private Void own(Moment moment, Map<String, String> values) {
    for (String template : dialect.lines(moment)) {
      if (template.equals("{message}")) {
        lines.comment(values.getOrDefault("message", ""));
        continue;
      }
      String line = template;
      for (Map.Entry<String, String> value : values.entrySet()) {
        line = line.replace("{" + value.getKey() + "}", PlainText.of(value.getValue()));
      }
      words.ownLine(line);
      words.endLine(lines);
    }
    modal.forget();
    return null;
  }

  @SuppressWarnings("NullAway") // Void has no other value.
  private Void flush() {
    words.endLine(lines);
    return null;
  }

  private void motion(String code) {
    if (capabilities.layout().repeatWords() || !code.equals(modal.motion)) {
      words.code(code);
      modal.motion = code;
    }
  }

  private boolean axis(int axis, long value) {
    boolean needed =
        capabilities.layout().repeatWords() || !modal.known[axis] || modal.at[axis] != value;
    if (needed) {
      words.length(AXES.charAt(axis), value);
    }
    modal.known[axis] = true;
    modal.at[axis] = value;
    return needed;
  }

  private void feed(long value) {
    if (capabilities.layout().repeatWords() || modal.feed != value) {
      words.feed(value);
      modal.feed = value;
    }
  }

  @Override
  public Void raise(Command.Raise raise) {
    own(Moment.RAISE, Map.of());
    return flush();
  }

  @Override
  public Void rapidXy(Command.RapidXy rapid) {
    boolean moves = modal.differs(0, rapid.x()) || modal.differs(1, rapid.y());
    if (moves) {
      motion("G0");
      axis(0, rapid.x());
      axis(1, rapid.y());
    }
    return flush();
  }

  @Override
  public Void rapidZ(Command.RapidZ rapid) {
    if (modal.differs(2, rapid.z())) {
      motion("G0");
      axis(2, rapid.z());
    }
    return flush();
  }

  @Override
  public Void line(Command.Line line) {
    motion("G1");
    axis(0, line.x());
    axis(1, line.y());
    axis(2, line.z());
    feed(line.feed());
    return flush();
  }

  @Override
  public Void arc(Command.Arc arc) {
    plane(arc.plane());
    motion(arc.clockwise() ? "G2" : "G3");
    long[] to = {arc.x(), arc.y(), arc.z()};
    for (int axis = 0; axis < to.length; axis++) {
      if (axis != arc.plane().normal()) {
        modal.known[axis] = false;
      }
      axis(axis, to[axis]);
    }
    if (arc.radius() != 0) {
      words.length('R', arc.radius());
    } else {
      long[] offset = new long[to.length];
      offset[arc.plane().first()] = arc.offsetU();
      offset[arc.plane().second()] = arc.offsetV();
      for (int axis = 0; axis < to.length; axis++) {
        if (axis != arc.plane().normal()) {
          words.length(OFFSETS.charAt(axis), offset[axis]);
        }
      }
    }
    feed(arc.feed());
    return flush();
  }

  private void plane(Plane plane) {
    if (plane != modal.plane) {
      words.code(
          switch (plane) {
            case XY -> "G17";
            case ZX -> "G18";
            case YZ -> "G19";
          });
      modal.plane = plane;
      flush();
    }
  }

  @Override
  public Void drill(Command.Drill drill) {
    plane(Plane.XY);
    words.code("G99");
    words.code(drill.peck() > 0 ? "G83" : drill.dwellSeconds() > 0 ? "G82" : "G81");
    words.length('X', drill.x());
    words.length('Y', drill.y());
    words.length('Z', drill.bottomZ());
    words.length('R', drill.retractZ());
    if (drill.peck() > 0) {
      words.length('Q', drill.peck());
    } else if (drill.dwellSeconds() > 0) {
      words.text("P" + dwellValue(drill.dwellSeconds()));
    }
    words.feed(drill.feed());
    flush();
    words.code("G80");
    flush();
    modal.forget();
    modal.place(drill.x(), drill.y(), drill.retractZ());
    return flush();
  }

  @Override
  public Void toolChange(Command.ToolChange change) {
    return own(Moment.TOOL_CHANGE, Map.of("tool", String.valueOf(change.tool().number())));
  }

  @Override
  public Void spindleOn(Command.SpindleOn on) {
    own(Moment.DUST_ON, Map.of());
    return own(Moment.SPINDLE_ON, Map.of("rpm", String.valueOf(on.rpm())));
  }

  @Override
  public Void spindleOff(Command.SpindleOff off) {
    own(Moment.SPINDLE_OFF, Map.of());
    return own(Moment.DUST_OFF, Map.of());
  }

  @Override
  public Void dwell(Command.Dwell dwell) {
    String letter = capabilities.dwell() == Capabilities.DwellWord.X_SECONDS ? "X" : "P";
    words.code("G4");
    words.text(letter + dwellValue(dwell.seconds()));
    return flush();
  }

  private String dwellValue(double seconds) {
    boolean milli = capabilities.dwell() == Capabilities.DwellWord.P_MILLISECONDS;
    return milli
        ? String.valueOf(Math.round(seconds * 1000))
        : NumberText.thousandths(seconds, capabilities.numbers().pointAlways());
  }

  @Override
  public Void stop(Command.Stop stop) {
    return own(Moment.STOP, Map.of("message", stop.message()));
  }

  /** Names the axes that it moves along, and Z in any case. */
  @Override
  public Void probe(Command.Probe probe) {
    words.code("G38.2");
    if (modal.differs(0, probe.x())) {
      words.length('X', probe.x());
    }
    if (modal.differs(1, probe.y())) {
      words.length('Y', probe.y());
    }
    words.length('Z', probe.z());
    words.feed(probe.feed());
    flush();
    return own(Moment.TOUCHED, Map.of("z", words.lengthText(probe.tripsAtZ())));
  }

  @Override
  public Void torch(Command.Torch torch) {
    return own(torch.on() ? Moment.TORCH_ON : Moment.TORCH_OFF, Map.of());
  }

  @Override
  public Void heightControl(Command.HeightControl control) {
    return own(control.on() ? Moment.HEIGHT_FOLLOW : Moment.HEIGHT_HOLD, Map.of());
  }

  @Override
  public Void remark(Command.Remark remark) {
    lines.comment(remark.text());
    return flush();
  }

  /** What the controller remembers from earlier lines. */
  private static final class Modal {
    private static final long NO_FEED = -1;

    private String motion = "";
    private Plane plane = Plane.XY;
    private final long[] at = new long[AXES.length()];
    private final boolean[] known = new boolean[AXES.length()];
    private long feed = NO_FEED;

    private void forget() {
      motion = "";
      Arrays.fill(known, false);
      feed = NO_FEED;
    }

    private void place(long x, long y, long z) {
      at[0] = x;
      at[1] = y;
      at[2] = z;
      Arrays.fill(known, true);
    }

    private boolean differs(int axis, long value) {
      return !known[axis] || at[axis] != value;
    }
  }
}
