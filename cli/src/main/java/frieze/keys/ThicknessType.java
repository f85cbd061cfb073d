package frieze.keys;

import frieze.shop.SheetGauge;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * The thickness of stock: caliper readings, or the gauge of a sheet with its metal, such as {@code
 * 12 ga steel}. Where both are given, the readings count and the gauge is a remark.
 */
public final class ThicknessType implements Type<List<Double>> {
  private static final Pattern GAUGE =
      Pattern.compile("(\\d{1,3})\\s*(?:ga|ga\\.|gauge)(?:\\s+(.+))?", Pattern.CASE_INSENSITIVE);
  private static final Type<Double> READING = Types.length(Range.POSITIVE);

  @Override
  public Optional<List<Double>> read(Node node, Reading reading) {
    List<Node> nodes = node instanceof SequenceNode list ? list.getValue() : List.of(node);
    if (nodes.isEmpty()) {
      reading.error(JobCode.WRONG_KIND, node, "expected at least 1 but found 0", "");
      return Optional.empty();
    }
    List<Double> gauges = new ArrayList<>();
    List<Double> readings = new ArrayList<>();
    for (Node each : nodes) {
      Optional<Matcher> gauge = gauge(each, reading);
      if (gauge.isPresent()) {
        gauge(gauge.get(), each, reading).ifPresent(gauges::add);
      } else {
        READING.read(each, reading).ifPresent(readings::add);
      }
    }
    if (gauges.size() + readings.size() < nodes.size()) {
      return Optional.empty();
    }
    return Optional.of(readings.isEmpty() ? gauges : readings);
  }

  private static Optional<Matcher> gauge(Node node, Reading reading) {
    if (!(node instanceof org.snakeyaml.engine.v2.nodes.ScalarNode)) {
      return Optional.empty();
    }
    return Types.scalar(node, "a thickness", reading).map(GAUGE::matcher).filter(Matcher::matches);
  }

  private static Optional<Double> gauge(Matcher written, Node node, Reading reading) {
    int number = Integer.parseInt(written.group(1));
    String metal = written.group(2);
    if (metal == null) {
      reading.error(
          JobCode.GAUGE_WITHOUT_METAL,
          node,
          "gauge " + number + " of what metal? The same number means different thicknesses",
          "write "
              + number
              + " ga steel, "
              + number
              + " ga galvanized steel, or a caliper reading");
      return Optional.empty();
    }
    Optional<SheetGauge> table = table(metal);
    if (table.isEmpty()) {
      reading.error(
          JobCode.GAUGE_WITHOUT_METAL,
          node,
          "there is no gauge table for \"" + metal + "\"",
          "steel and galvanized steel have one; for other metals give the thickness");
      return Optional.empty();
    }
    Optional<Double> thickness = table.get().thicknessMm(number);
    if (thickness.isEmpty()) {
      reading.error(
          JobCode.NO_SUCH_GAUGE,
          node,
          "there is no gauge " + number + " of " + table.get().metal(),
          "the table has " + table.get().lowest() + " to " + table.get().highest());
    }
    return thickness;
  }

  private static Optional<SheetGauge> table(String metal) {
    return switch (metal.strip().toLowerCase(java.util.Locale.ROOT)) {
      case "steel", "mild steel", "bare steel" -> Optional.of(SheetGauge.STEEL);
      case "galvanized", "galvanised", "galvanized steel", "galvanised steel" ->
          Optional.of(SheetGauge.GALVANIZED);
      default -> Optional.empty();
    };
  }

  @Override
  public String describe() {
    return READING.describe() + ", or a sheet gauge such as `12 ga steel`; or a list of readings";
  }

  @Override
  public Map<String, Object> schema() {
    Map<String, Object> one = READING.schema();
    return Map.of("anyOf", List.of(one, Map.of("type", "array", "items", one, "minItems", 1)));
  }
}
