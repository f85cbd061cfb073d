package frieze.keys;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** The plain types of values. */
public final class Types {
  /** Any text that is not blank. */
  public static final Type<String> TEXT = new Text();

  /** {@code yes} or {@code no}; {@code true} and {@code false} too. */
  public static final Type<Boolean> YES_NO = new YesNo();

  private Types() {}

  public static Type<Double> length(Range range) {
    return new Quantity(UnitKind.LENGTH, range);
  }

  public static Type<Double> quantity(UnitKind kind, Range range) {
    return new Quantity(kind, range);
  }

  /** A number without a unit. */
  public static Type<Double> number(Range range) {
    return new Plain(range);
  }

  public static Type<Integer> count(int low, int high) {
    return new Count(low, high);
  }

  /** A scalar's text; empty after an error if the node is a list or a section. */
  static Optional<String> scalar(Node node, String expected, Reading reading) {
    if (node instanceof ScalarNode scalar) {
      if (!scalar.getValue().isBlank()) {
        return Optional.of(scalar.getValue().strip());
      }
      reading.error(JobCode.WRONG_KIND, node, "expected " + expected + " but nothing is here", "");
    } else {
      reading.error(
          JobCode.WRONG_KIND, node, "expected " + expected + " but found " + kindOf(node), "");
    }
    return Optional.empty();
  }

  static String kindOf(Node node) {
    if (node instanceof MappingNode) {
      return "a section";
    }
    return node instanceof SequenceNode ? "a list" : "a single value";
  }

  private record Text() implements Type<String> {
    @Override
    public Optional<String> read(Node node, Reading reading) {
      return scalar(node, "a text", reading);
    }

    @Override
    public String describe() {
      return "text";
    }

    @Override
    public Map<String, Object> schema() {
      return Map.of("type", List.of("string", "number"));
    }
  }

  private record YesNo() implements Type<Boolean> {
    @Override
    public Optional<Boolean> read(Node node, Reading reading) {
      Optional<String> text = scalar(node, "yes or no", reading);
      if (text.isEmpty()) {
        return Optional.empty();
      }
      switch (text.get()) {
        case "yes", "true" -> {
          return Optional.of(true);
        }
        case "no", "false" -> {
          return Optional.of(false);
        }
        default -> {
          reading.error(
              JobCode.UNKNOWN_WORD,
              node,
              "expected yes or no but found \"" + text.get() + "\"",
              "write yes or no");
          return Optional.empty();
        }
      }
    }

    @Override
    public String describe() {
      return "`yes` or `no`";
    }

    @Override
    public Map<String, Object> schema() {
      return Map.of("enum", List.of("yes", "no", true, false));
    }
  }

  private record Quantity(UnitKind kind, Range range) implements Type<Double> {
    @Override
    public Optional<Double> read(Node node, Reading reading) {
      Optional<String> text = scalar(node, kind.label(), reading);
      if (text.isEmpty()) {
        return Optional.empty();
      }
      try {
        double value = QuantityText.read(text.get(), kind, reading.inches());
        if (range.contains(value)) {
          return Optional.of(value);
        }
        reading.error(range.code(), node, text.get() + " must be " + range.words(), range.hint());
      } catch (QuantityText.NotAQuantity e) {
        reading.error(e.code(), node, e.text(), e.hint());
      }
      return Optional.empty();
    }

    @Override
    public String describe() {
      return kind.label() + (range.words().isEmpty() ? "" : ", " + range.words());
    }

    @Override
    public Map<String, Object> schema() {
      return Map.of("type", List.of("string", "number"));
    }
  }

  private record Plain(Range range) implements Type<Double> {
    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d{1,9}(\\.\\d{1,9})?");

    @Override
    public Optional<Double> read(Node node, Reading reading) {
      Optional<String> text = scalar(node, "a number", reading);
      if (text.isEmpty()) {
        return Optional.empty();
      }
      if (!NUMBER.matcher(text.get()).matches()) {
        reading.error(
            JobCode.NOT_A_QUANTITY, node, "\"" + text.get() + "\" is not a plain number", "");
        return Optional.empty();
      }
      double value = Double.parseDouble(text.get());
      if (!range.contains(value)) {
        reading.error(range.code(), node, text.get() + " must be " + range.words(), range.hint());
        return Optional.empty();
      }
      return Optional.of(value);
    }

    @Override
    public String describe() {
      return "a number" + (range.words().isEmpty() ? "" : ", " + range.words());
    }

    @Override
    public Map<String, Object> schema() {
      return Map.of("type", "number");
    }
  }

  private record Count(int low, int high) implements Type<Integer> {
    private static final Pattern DIGITS = Pattern.compile("[+-]?\\d{1,9}");

    @Override
    public Optional<Integer> read(Node node, Reading reading) {
      Optional<String> text = scalar(node, "a whole number", reading);
      if (text.isEmpty()) {
        return Optional.empty();
      }
      if (!DIGITS.matcher(text.get()).matches()) {
        reading.error(
            JobCode.NOT_A_QUANTITY, node, "\"" + text.get() + "\" is not a whole number", "");
        return Optional.empty();
      }
      int value = Integer.parseInt(text.get());
      if (value < low || value > high) {
        reading.error(
            JobCode.OUT_OF_RANGE, node, value + " must be from " + low + " to " + high, "");
        return Optional.empty();
      }
      return Optional.of(value);
    }

    @Override
    public String describe() {
      return "a whole number, " + low + " to " + high;
    }

    @Override
    public Map<String, Object> schema() {
      return Map.of("type", "integer", "minimum", low, "maximum", high);
    }
  }
}
