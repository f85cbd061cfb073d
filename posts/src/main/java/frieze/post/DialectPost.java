package frieze.post;

import frieze.lower.Capabilities;
import frieze.lower.Program;
import frieze.rs274.ReadingRules;

/** Writes programs as a dialect says. */
final class DialectPost implements Post {
  private final Dialect dialect;

  DialectPost(Dialect dialect) {
    this.dialect = dialect;
  }

  @Override
  public String id() {
    return dialect.id();
  }

  @Override
  public String summary() {
    return dialect.summary();
  }

  @Override
  public Capabilities capabilities() {
    return dialect.capabilities();
  }

  @Override
  public ReadingRules reading() {
    return CapabilityRules.of(dialect.capabilities()).but().paths(dialect.paths()).build();
  }

  @Override
  public ProgramText write(Program program) {
    LineWriter lines = new LineWriter(dialect.capabilities().layout());
    CommandWriter writer = new CommandWriter(dialect, program, lines);
    writer.start();
    for (Program.Entry entry : program.entries()) {
      lines.origin(entry.origin());
      entry.command().accept(writer);
    }
    lines.origin("");
    writer.end();
    return new ProgramText(
        program.fileName(),
        program.tools(),
        program.grid().inches(),
        program.touchSpots(),
        lines.text(),
        lines.origins());
  }
}
