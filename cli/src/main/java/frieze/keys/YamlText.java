package frieze.keys;

import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.SourceSpan;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** Parses YAML 1.2 into its node tree, and says where in the text a node stands. */
public final class YamlText {
  private static final int LARGEST = 3_000_000;

  private YamlText() {}

  /**
   * Parses a text.
   *
   * @return empty for a text that holds nothing
   * @throws BadInputException if it is not YAML
   */
  public static Optional<Node> parse(String source, byte[] content) {
    if (content.length > LARGEST) {
      throw notYaml(
          SourceSpan.file(source),
          "the text has " + content.length + " bytes; at most " + LARGEST + " are read",
          "split it into several jobs");
    }
    try {
      String text = decoded(source, content);
      LoadSettings settings =
          LoadSettings.builder().setLabel(source).setCodePointLimit(LARGEST).build();
      String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
      Optional<Mark> tooDeep = Nesting.tooDeep(settings, plain);
      if (tooDeep.isPresent()) {
        throw notYaml(
            at(source, tooDeep.get()), "too many brackets or blocks inside each other", "");
      }
      return new Compose(settings).composeString(plain);
    } catch (MarkedYamlEngineException e) {
      SourceSpan where =
          e.getProblemMark().map(mark -> at(source, mark)).orElse(SourceSpan.file(source));
      throw notYaml(where, "not YAML: " + problem(e), hint(e));
    } catch (YamlEngineException e) {
      String message = firstLine(String.valueOf(e.getMessage()));
      String hint = message.contains("aliases") ? "write the text out instead of repeating it" : "";
      throw notYaml(SourceSpan.file(source), "not YAML: " + message, hint);
    }
  }

  private static String decoded(String source, byte[] content) {
    ByteBuffer in = ByteBuffer.wrap(content);
    CharBuffer out = CharBuffer.allocate(content.length);
    if (!StandardCharsets.UTF_8.newDecoder().decode(in, out, true).isError()) {
      return out.flip().toString();
    }
    String before = out.flip().toString();
    long line = before.chars().filter(c -> c == '\n').count() + 1;
    int column = before.length() - before.lastIndexOf('\n');
    throw notYaml(
        new SourceSpan(source, (int) line, column, 0),
        "the text is not UTF-8: byte "
            + (in.position() + 1)
            + " is "
            + String.format(Locale.ROOT, "%02X", content[in.position()]),
        "save it as UTF-8");
  }

  private static BadInputException notYaml(SourceSpan where, String message, String hint) {
    return new BadInputException(Diagnostic.error(JobCode.NOT_YAML, where, message, hint));
  }

  private static String problem(MarkedYamlEngineException e) {
    String context =
        e.getContext() == null || e.getContext().isBlank() ? "" : e.getContext() + ", ";
    return firstLine(context + e.getProblem());
  }

  private static String firstLine(String message) {
    return message.lines().findFirst().orElse("").strip();
  }

  private static String hint(MarkedYamlEngineException e) {
    String problem = String.valueOf(e.getProblem()).toLowerCase(Locale.ROOT);
    if (problem.contains("\\t") || problem.contains("tab")) {
      return "indent with spaces, not with tabs";
    }
    if (problem.contains("mapping values are not allowed")) {
      return "put quotes around a text that has a colon and a space in it";
    }
    return "check the indentation, the brackets and the quotes here";
  }

  static SourceSpan at(String source, Mark mark) {
    return new SourceSpan(source, mark.getLine() + 1, mark.getColumn() + 1, 0);
  }

  /**
   * Where a node starts; with its length if it is a value on one line.
   *
   * @param source the file, for a node that does not know where it comes from
   */
  static SourceSpan span(String source, Node node) {
    Optional<Mark> start = node.getStartMark();
    if (start.isEmpty()) {
      return SourceSpan.file(source);
    }
    SourceSpan at = at(start.get().getName(), start.get());
    return node instanceof ScalarNode
        ? new SourceSpan(
            at.source(), at.line(), at.column(), length(start.get(), node.getEndMark()))
        : at;
  }

  private static int length(Mark start, Optional<Mark> end) {
    return end.filter(mark -> mark.getLine() == start.getLine())
        .map(mark -> Math.max(0, mark.getColumn() - start.getColumn()))
        .orElse(0);
  }
}
