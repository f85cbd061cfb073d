package frieze.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import frieze.clock.TimeSpent;
import frieze.dryrun.DryRunResult;
import frieze.dryrun.Extents;
import frieze.dryrun.ProgramReport;
import frieze.dryrun.ToolReport;
import frieze.dryrun.ZeroFit;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.FindingCount;
import frieze.dryrun.finding.NotChecked;
import frieze.dryrun.scene.Range;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Writes the result of a dry run for scripts. Lengths in millimetres, times in seconds. */
final class DryRunJson {
  private static final double DECIMALS = 1e4;

  private final JsonGenerator json;

  private DryRunJson(JsonGenerator json) {
    this.json = json;
  }

  static String write(DryRunResult result) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      DefaultIndenter newLine = new DefaultIndenter("  ", "\n");
      json.setPrettyPrinter(
          new DefaultPrettyPrinter().withObjectIndenter(newLine).withArrayIndenter(newLine));
      new DryRunJson(json).result(result);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text + "\n";
  }

  private void result(DryRunResult result) throws IOException {
    json.writeStartObject();
    json.writeBooleanField("readable", result.readable());
    json.writeBooleanField("mayWrite", result.mayWrite());
    extents("cuts", result.program().feed());
    extents("rapids", result.program().rapid());
    extents("cutsOnMachine", result.machine().feed());
    extents("rapidsOnMachine", result.machine().rapid());
    time(result.time());
    json.writeArrayFieldStart("programs");
    for (ProgramReport program : result.programs()) {
      program(program);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("tools");
    for (ToolReport tool : result.tools()) {
      tool(tool);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("axes");
    for (ZeroFit fit : result.zeroFits()) {
      fit(fit);
    }
    json.writeEndArray();
    findings(result);
    json.writeArrayFieldStart("notChecked");
    for (NotChecked open : result.notChecked()) {
      json.writeStartObject();
      json.writeStringField("what", open.what());
      json.writeStringField("why", open.why());
      json.writeBooleanField("canHurt", open.canHurt());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void program(ProgramReport program) throws IOException {
    json.writeStartObject();
    json.writeStringField("name", program.name());
    json.writeNumberField("lines", program.lines());
    number("cutMm", program.feedMm());
    number("rapidMm", program.rapidMm());
    number("lowestZMm", program.lowestZMm());
    number("deepestMm", program.deepestMm());
    time(program.time());
    json.writeEndObject();
  }

  private void tool(ToolReport tool) throws IOException {
    json.writeStartObject();
    if (tool.toolNumber().isPresent()) {
      json.writeNumberField("number", tool.toolNumber().get());
    }
    if (tool.toolName().isPresent()) {
      json.writeStringField("name", tool.toolName().get());
    }
    extents("cuts", tool.program().feed());
    extents("rapids", tool.program().rapid());
    number("cutMm", tool.feedMm());
    number("rapidMm", tool.rapidMm());
    number("lowestZMm", tool.lowestZMm());
    number("deepestMm", tool.deepestMm());
    time(tool.time());
    json.writeEndObject();
  }

  private void fit(ZeroFit fit) throws IOException {
    json.writeStartObject();
    json.writeStringField("axis", fit.axis());
    number("neededMm", fit.neededMm());
    number("travelMm", fit.travelMm());
    json.writeBooleanField("fits", fit.fits());
    range("zeroMm", fit.zeroMm());
    json.writeEndObject();
  }

  private void findings(DryRunResult result) throws IOException {
    json.writeArrayFieldStart("findings");
    for (Finding finding : result.findings()) {
      json.writeStartObject();
      json.writeStringField("severity", finding.severity().name().toLowerCase(Locale.ROOT));
      json.writeStringField("code", finding.code().id());
      json.writeStringField("program", finding.program());
      json.writeNumberField("line", finding.line());
      json.writeNumberField("firstLine", finding.firstLine());
      json.writeNumberField("lastLine", finding.lastLine());
      json.writeNumberField("column", finding.column());
      json.writeStringField("text", finding.text());
      json.writeStringField("move", finding.move());
      if (!finding.amount().isNone()) {
        number("amount", finding.amount().value());
        json.writeStringField("unit", finding.amount().unit());
      }
      json.writeStringField("message", finding.message());
      json.writeStringField("hint", finding.hint());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeObjectFieldStart("counts");
    for (FindingCount count : result.counts()) {
      json.writeNumberField(count.code().id(), count.found());
    }
    json.writeEndObject();
  }

  private void extents(String name, Extents extents) throws IOException {
    json.writeObjectFieldStart(name);
    range("x", extents.x());
    range("y", extents.y());
    range("z", extents.z());
    json.writeEndObject();
  }

  private void range(String name, Optional<Range> range) throws IOException {
    if (range.isPresent()) {
      json.writeObjectFieldStart(name);
      number("min", range.get().minMm());
      number("max", range.get().maxMm());
      json.writeEndObject();
    }
  }

  private void time(TimeSpent time) throws IOException {
    json.writeObjectFieldStart("seconds");
    number("cutting", time.feedSeconds());
    number("rapids", time.rapidSeconds());
    number("waiting", time.waitSeconds());
    number("byHand", time.handSeconds());
    json.writeEndObject();
  }

  private void number(String name, OptionalDouble value) throws IOException {
    if (value.isPresent()) {
      number(name, value.getAsDouble());
    }
  }

  private void number(String name, double value) throws IOException {
    double rounded = Math.rint(value * DECIMALS) / DECIMALS;
    json.writeNumberField(name, rounded == 0 ? 0 : rounded);
  }
}
