package frieze.sheet;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import frieze.bridge.KerfLimits;
import frieze.clock.TimeSpent;
import frieze.dryrun.Extents;
import frieze.dryrun.ProgramReport;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.NotChecked;
import frieze.dryrun.scene.Range;
import frieze.opening.Sitting;
import frieze.plan.cut.Leftover;
import frieze.plan.cut.RimUse;
import frieze.post.ProgramText;
import frieze.region.Region;
import frieze.shop.Setup;
import frieze.shop.ToolShape;
import frieze.steps.Seam;
import frieze.torch.TorchPlan;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Writes the facts of the setup sheet for other programs: lengths in millimetres, times in seconds,
 * keys always in the same order.
 */
public final class ReportJson {
  private static final double GRAIN = 1e6;

  private final JsonGenerator json;

  private ReportJson(JsonGenerator json) {
    this.json = json;
  }

  /** The whole report. */
  public static String text(SheetFacts facts) {
    StringWriter out = new StringWriter();
    try (JsonGenerator json = JsonFactory.builder().build().createGenerator(out)) {
      DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
      json.setPrettyPrinter(
          new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter));
      new ReportJson(json).write(facts);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.append('\n').toString();
  }

  private void write(SheetFacts facts) throws IOException {
    json.writeStartObject();
    json.writeStringField("job", facts.job());
    json.writeStringField("file", facts.jobFile());
    json.writeStringField("machine", facts.machine().name());
    json.writeStringField("post", facts.post());
    json.writeStringField("unit", "mm");
    json.writeArrayFieldStart("panels");
    for (PanelFacts panel : facts.panels()) {
      panel(facts, panel);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void panel(SheetFacts facts, PanelFacts panel) throws IOException {
    json.writeStartObject();
    json.writeStringField("name", panel.name());
    json.writeBooleanField("passed", panel.dryRun().mayWrite());
    number("length", panel.design().panel().lengthMm());
    number("height", panel.design().panel().heightMm());
    json.writeObjectFieldStart("opening");
    number("width", panel.opening().widthMm());
    number("height", panel.opening().heightMm());
    number("corner", panel.opening().cornerRadiusMm());
    number("gap", panel.gapMm());
    if (panel.sitting().isPresent()) {
      sitting(panel.sitting().get());
    }
    json.writeEndObject();
    setup(panel.setup());
    if (panel.part().isPresent()) {
      part(panel.part().get());
    }
    drawings(panel);
    tools(facts, panel);
    programs(panel);
    time("time", panel.dryRun().time());
    findings(panel);
    notChecked(panel);
    leftovers(panel);
    if (panel.torch().isPresent()) {
      beyondKerf(panel.torch().get());
    }
    engagement(panel);
    json.writeEndObject();
  }

  private void sitting(Sitting sitting) throws IOException {
    json.writeBooleanField("drawn", sitting.drawn().isPresent());
    if (sitting.drawn().isPresent()) {
      number("widestGap", sitting.drawn().get().widestMm());
    } else {
      number("misfit", sitting.opening().misfitMm());
      number("leanLeft", sitting.opening().outOfSquareLeftMm());
      number("leanRight", sitting.opening().outOfSquareRightMm());
      number("bow", sitting.opening().bowMm());
    }
    json.writeArrayFieldStart("gaps");
    for (Sitting.Gap gap : sitting.allGaps()) {
      json.writeStartObject();
      json.writeStringField("place", gap.place());
      number("now", gap.nowMm());
      number("driest", gap.driestMm());
      number("wettest", gap.wettestMm());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void setup(Setup setup) throws IOException {
    json.writeObjectFieldStart("setup");
    json.writeStringField("material", setup.stock().material().name());
    number("stockLength", setup.stock().lengthMm());
    number("stockWidth", setup.stock().widthMm());
    json.writeArrayFieldStart("thicknessReadings");
    for (double reading : setup.stock().thicknessReadingsMm()) {
      json.writeNumber(rounded(reading));
    }
    json.writeEndArray();
    json.writeBooleanField("blank", setup.stock().blank());
    json.writeStringField("zeroX", word(setup.zero().x()));
    json.writeStringField("zeroY", word(setup.zero().y()));
    json.writeStringField("zeroZ", word(setup.zero().z()));
    number("panelX", setup.panelXMm());
    number("panelY", setup.panelYMm());
    number("clearance", setup.clearanceMm());
    number("spoilboard", setup.spoilboardMm());
    number("allowanceFace", setup.allowance().faceMm());
    number("allowanceWalls", setup.allowance().wallsMm());
    json.writeEndObject();
  }

  private void part(StepPart part) throws IOException {
    json.writeObjectFieldStart("step");
    json.writeNumberField("number", part.step() + 1);
    json.writeNumberField("of", part.steps().count());
    json.writeBooleanField("boresForPins", part.boring());
    number("pushed", part.pushedMm());
    json.writeArrayFieldStart("seams");
    for (Seam seam : part.steps().seams()) {
      json.writeStartObject();
      number("x", seam.xMm());
      json.writeArrayFieldStart("crossedBy");
      for (String work : seam.crossed()) {
        json.writeString(work);
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }

  private void drawings(PanelFacts panel) throws IOException {
    json.writeArrayFieldStart("drawings");
    for (PanelFacts.DrawingFacts d : panel.drawings()) {
      json.writeStartObject();
      json.writeStringField("name", d.name());
      json.writeStringField("file", d.file());
      json.writeStringField("sizeAssumed", d.sizeAssumed());
      if (!d.text().isEmpty()) {
        json.writeArrayFieldStart("text");
        for (String words : d.text()) {
          json.writeString(words);
        }
        json.writeEndArray();
      }
      number("length", d.lengthMm());
      number("height", d.heightMm());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void tools(SheetFacts facts, PanelFacts panel) throws IOException {
    json.writeArrayFieldStart("tools");
    for (ToolUse use : ToolUse.of(panel.plan().cuts())) {
      json.writeStartObject();
      json.writeNumberField("number", use.tool().number());
      json.writeStringField("name", use.tool().name());
      number("diameter", use.tool().diameterMm());
      json.writeStringField("spindle", use.setting(facts.machine().spindle()));
      number("fastestFeedPerMin", use.fastestMmPerMin());
      number("deepest", use.deepestMm());
      if (use.tool().shape() instanceof ToolShape.Vee vee) {
        number("widensByDepth", vee.widensBy());
      }
      json.writeArrayFieldStart("work");
      for (String work : use.works()) {
        json.writeString(work);
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void programs(PanelFacts panel) throws IOException {
    json.writeArrayFieldStart("programs");
    for (int i = 0; i < panel.programs().size(); i++) {
      ProgramText program = panel.programs().get(i);
      json.writeStartObject();
      json.writeStringField("file", program.fileName());
      json.writeArrayFieldStart("tools");
      for (var tool : program.tools()) {
        json.writeNumber(tool.number());
      }
      json.writeEndArray();
      if (i < panel.dryRun().programs().size()) {
        report(panel.dryRun().programs().get(i));
      }
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void report(ProgramReport report) throws IOException {
    json.writeNumberField("lines", report.lines());
    number("cutLength", report.feedMm());
    number("rapidLength", report.rapidMm());
    optional("deepest", report.deepestMm());
    extents(report.program().all());
    time("time", report.time());
  }

  private void extents(Extents extents) throws IOException {
    json.writeObjectFieldStart("extents");
    for (int axis = 0; axis < 3; axis++) {
      Optional<Range> range = extents.get(axis);
      if (range.isPresent()) {
        json.writeArrayFieldStart("XYZ".substring(axis, axis + 1));
        json.writeNumber(rounded(range.get().minMm()));
        json.writeNumber(rounded(range.get().maxMm()));
        json.writeEndArray();
      }
    }
    json.writeEndObject();
  }

  private void time(String name, TimeSpent time) throws IOException {
    json.writeObjectFieldStart(name);
    number("feed", time.feedSeconds());
    number("rapid", time.rapidSeconds());
    number("wait", time.waitSeconds());
    number("hand", time.handSeconds());
    json.writeEndObject();
  }

  private void findings(PanelFacts panel) throws IOException {
    json.writeArrayFieldStart("findings");
    for (Finding f : panel.dryRun().findings()) {
      json.writeStartObject();
      json.writeStringField("severity", word(f.severity()));
      json.writeStringField("code", f.code().id());
      json.writeStringField("program", f.program());
      json.writeNumberField("line", f.line());
      json.writeStringField("move", f.move());
      json.writeStringField("amount", f.amount().toString());
      json.writeStringField("message", f.message());
      json.writeStringField("hint", f.hint());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void notChecked(PanelFacts panel) throws IOException {
    json.writeArrayFieldStart("notChecked");
    for (NotChecked n : panel.dryRun().notChecked()) {
      json.writeStartObject();
      json.writeStringField("what", n.what());
      json.writeStringField("why", n.why());
      json.writeBooleanField("canHurt", n.canHurt());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void leftovers(PanelFacts panel) throws IOException {
    json.writeArrayFieldStart("leftUncut");
    for (Leftover l : panel.plan().leftovers()) {
      json.writeStartObject();
      json.writeStringField("work", l.work());
      number("areaMm2", l.area().area());
      json.writeArrayFieldStart("places");
      for (Region part : l.area().parts()) {
        json.writeStartObject();
        number("x", part.bounds().centre().x());
        number("y", part.bounds().centre().y());
        number("areaMm2", part.area());
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void beyondKerf(TorchPlan plan) throws IOException {
    json.writeArrayFieldStart("beyondKerf");
    for (KerfLimits.Trouble t : plan.limits()) {
      json.writeStartObject();
      json.writeStringField("what", t.kind().code().id());
      number("x", t.place().x());
      number("y", t.place().y());
      number("widthMm", t.widthMm());
      number("lengthMm", t.lengthMm());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void engagement(PanelFacts panel) throws IOException {
    json.writeArrayFieldStart("engagement");
    for (RimUse rim : panel.plan().rims()) {
      json.writeStartObject();
      json.writeStringField("work", rim.work());
      json.writeNumberField("tool", rim.tool().number());
      number("usualDeg", Math.toDegrees(rim.usualRad()));
      number("mostDeg", Math.toDegrees(rim.mostRad()));
      number("slowedPart", rim.beyond().part());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void number(String name, double value) throws IOException {
    json.writeNumberField(name, rounded(value));
  }

  private void optional(String name, OptionalDouble value) throws IOException {
    if (value.isPresent()) {
      number(name, value.getAsDouble());
    }
  }

  /** To a nanometre: digits beyond that are noise. */
  private static double rounded(double value) {
    return Math.rint(value * GRAIN) / GRAIN;
  }
}
