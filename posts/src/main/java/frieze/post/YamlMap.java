package frieze.post;

import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * The keys of one mapping in a dialect file. Whatever is wrong is told to the diagnostics, with its
 * place, and a stand-in is given back, so that all errors come to light at once.
 */
final class YamlMap {
  private static final Pattern LENGTH = Pattern.compile("(\\d+(?:\\.\\d+)?) ?(mm|in)");
  private static final double MM_PER_INCH = 25.4;

  /** Far more than a dialect needs. */
  private static final int DEEPEST = 20;

  /** A text and where it stands. */
  record Text(String value, SourceSpan where) {}

  private record Value(Node node, SourceSpan where) {}

  private final String source;
  private final SourceSpan where;
  private final Diagnostics problems;
  private final Map<String, Value> values = new LinkedHashMap<>();
  private final Set<String> asked = new TreeSet<>();

  private YamlMap(String source, SourceSpan where, Diagnostics problems) {
    this.source = source;
    this.where = where;
    this.problems = problems;
  }

  /**
   * Reads the mapping that a text holds.
   *
   * @throws BadInputException when it is not YAML, or not a mapping
   */
  static YamlMap parse(String source, String text, Diagnostics problems) {
    LoadSettings settings =
        LoadSettings.builder().setLabel(source).setAllowNonScalarKeys(true).build();
    Optional<Node> root;
    try {
      refuseDepth(source, text, settings);
      root = new Compose(settings).composeString(text);
    } catch (MarkedYamlEngineException e) {
      SourceSpan at = e.getProblemMark().map(m -> at(source, m)).orElse(SourceSpan.file(source));
      throw notYaml(at, "not YAML: " + e.getProblem());
    } catch (YamlEngineException e) {
      throw notYaml(SourceSpan.file(source), "not YAML: " + e.getMessage());
    }
    if (root.isPresent() && root.get() instanceof MappingNode mapping) {
      return of(source, mapping, problems);
    }
    throw notYaml(SourceSpan.file(source), "the file has no keys");
  }

  /** The composer goes down by recursion, and would run out of stack. */
  private static void refuseDepth(String source, String text, LoadSettings settings) {
    int depth = 0;
    for (Event event : new Parse(settings).parseString(text)) {
      switch (event.getEventId()) {
        case MappingStart, SequenceStart -> depth++;
        case MappingEnd, SequenceEnd -> depth--;
        default -> {
          continue;
        }
      }
      if (depth > DEEPEST) {
        SourceSpan at =
            event.getStartMark().map(m -> at(source, m)).orElse(SourceSpan.file(source));
        throw notYaml(at, "too many brackets or blocks inside each other");
      }
    }
  }

  private static BadInputException notYaml(SourceSpan at, String message) {
    return new BadInputException(
        Diagnostic.error(
            PostCode.NOT_YAML, at, message, "see docs/posts/dialect-files.md for an example"));
  }

  private static YamlMap of(String source, MappingNode mapping, Diagnostics problems) {
    YamlMap map = new YamlMap(source, span(source, mapping), problems);
    for (NodeTuple tuple : mapping.getValue()) {
      SourceSpan at = span(source, tuple.getKeyNode());
      if (!(tuple.getKeyNode() instanceof ScalarNode key)) {
        problems.error(PostCode.UNKNOWN_KEY, at, "a key must be a plain word", "");
      } else if (map.values.put(key.getValue(), new Value(tuple.getValueNode(), at)) != null) {
        problems.error(
            PostCode.DUPLICATE_KEY, at, "the key \"" + key.getValue() + "\" stands here twice", "");
      }
    }
    return map;
  }

  private static SourceSpan at(String source, Mark mark) {
    return new SourceSpan(source, mark.getLine() + 1, mark.getColumn() + 1, 0);
  }

  private static SourceSpan span(String source, Node node) {
    return node.getStartMark().map(m -> at(source, m)).orElse(SourceSpan.file(source));
  }

  /** Tells that a key's value cannot be. */
  void wrong(String key, String message, String hint) {
    wrong(where(key), message, hint);
  }

  private void wrong(SourceSpan at, String message, String hint) {
    problems.error(PostCode.WRONG_VALUE, at, message, hint);
  }

  /** Where the mapping starts. */
  SourceSpan where() {
    return where;
  }

  /** Where a key's value stands, or the mapping if the key is not there. */
  SourceSpan where(String key) {
    Value value = values.get(key);
    return value == null ? where : span(source, value.node());
  }

  boolean has(String key) {
    return values.containsKey(key);
  }

  private Optional<Node> node(String key) {
    asked.add(key);
    return Optional.ofNullable(values.get(key)).map(Value::node);
  }

  /** A mapping inside; an empty one if the key is not there. */
  YamlMap map(String key) {
    Optional<Node> node = node(key);
    if (node.isPresent() && node.get() instanceof MappingNode mapping) {
      return of(source, mapping, problems);
    }
    node.ifPresent(n -> wrong(span(source, n), key + " needs keys of its own", ""));
    return new YamlMap(source, where, problems);
  }

  /** A text; told as missing if the key is not there. */
  String required(String key) {
    Optional<String> text = text(key);
    if (text.isEmpty()) {
      problems.error(PostCode.MISSING_KEY, where, "the key \"" + key + "\" is missing", "");
    }
    return text.orElse("");
  }

  Optional<String> text(String key) {
    Optional<Node> node = node(key);
    if (node.isPresent() && node.get() instanceof ScalarNode scalar) {
      return Optional.of(scalar.getValue().strip());
    }
    node.ifPresent(n -> wrong(span(source, n), key + " must be one text", ""));
    return Optional.empty();
  }

  boolean yes(String key) {
    return text(key)
        .map(
            t ->
                switch (t) {
                  case "yes", "true" -> true;
                  case "no", "false" -> false;
                  default -> {
                    wrong(where(key), key + " must be yes or no, not \"" + t + "\"", "");
                    yield false;
                  }
                })
        .orElse(false);
  }

  /** A whole number. */
  int number(String key, int usual, int least, int most) {
    Optional<String> text = text(key);
    if (text.isEmpty()) {
      return usual;
    }
    OptionalInt number = parseInt(text.get());
    if (number.isEmpty() || number.getAsInt() < least || number.getAsInt() > most) {
      wrong(
          where(key),
          key + " must be a whole number from " + least + " to " + most + ", not " + text.get(),
          "");
      return usual;
    }
    return number.getAsInt();
  }

  private static OptionalInt parseInt(String text) {
    try {
      return OptionalInt.of(Integer.parseInt(text));
    } catch (NumberFormatException e) {
      return OptionalInt.empty();
    }
  }

  double lengthMm(String key, double usualMm) {
    Optional<String> text = text(key);
    if (text.isEmpty()) {
      return usualMm;
    }
    Matcher m = LENGTH.matcher(text.get());
    if (!m.matches()) {
      wrong(where(key), key + " must be a length, not \"" + text.get() + "\"", "such as 0.5 mm");
      return usualMm;
    }
    double value = Double.parseDouble(m.group(1));
    return m.group(2).equals("in") ? value * MM_PER_INCH : value;
  }

  /** One of the constants of an enum, written in lower case with blanks. */
  <E extends Enum<E>> E choice(String key, E usual) {
    Optional<String> text = text(key);
    if (text.isEmpty()) {
      return usual;
    }
    List<String> words = new ArrayList<>();
    for (E constant : usual.getDeclaringClass().getEnumConstants()) {
      String word = constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
      if (word.equals(text.get().toLowerCase(Locale.ROOT))) {
        return constant;
      }
      words.add(word);
    }
    wrong(
        where(key),
        key + " cannot be \"" + text.get() + "\"",
        "it is one of: " + String.join(", ", words));
    return usual;
  }

  /** Words separated by blanks. */
  List<String> words(String key) {
    return text(key)
        .filter(t -> !t.isEmpty())
        .map(t -> List.of(t.split(" +", -1)))
        .orElse(List.of());
  }

  /** One line or a list of lines. */
  List<Text> lines(String key) {
    List<Text> lines = new ArrayList<>();
    Optional<Node> node = node(key);
    if (node.isPresent() && node.get() instanceof SequenceNode sequence) {
      sequence.getValue().forEach(n -> line(key, n, lines));
    } else {
      node.ifPresent(n -> line(key, n, lines));
    }
    return lines;
  }

  private void line(String key, Node node, List<Text> lines) {
    if (node instanceof ScalarNode scalar) {
      lines.add(new Text(scalar.getValue().strip(), span(source, node)));
    } else {
      wrong(span(source, node), key + " must be lines of text", "put quotes around each line");
    }
  }

  /** Tells of every key that nobody has asked for. */
  void refuseOthers() {
    for (Map.Entry<String, Value> entry : values.entrySet()) {
      if (!asked.contains(entry.getKey())) {
        problems.error(
            PostCode.UNKNOWN_KEY,
            entry.getValue().where(),
            "no dialect has the key \"" + entry.getKey() + "\" here",
            "known here: " + String.join(", ", asked));
      }
    }
  }
}
