package frieze.keys;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * A list of values of one type.
 *
 * @param shortest the least number of items
 * @param longest the greatest number of items
 * @param orSingle whether a lone value stands for a list of one
 */
public record ListType<T>(Type<T> item, int shortest, int longest, boolean orSingle)
    implements Type<List<T>> {
  private static final int LONGEST = 10_000;

  public static <T> Type<List<T>> of(Type<T> item) {
    return new ListType<>(item, 1, LONGEST, false);
  }

  public static <T> Type<List<T>> oneOrMore(Type<T> item) {
    return new ListType<>(item, 1, LONGEST, true);
  }

  public static <T> Type<List<T>> exactly(int length, Type<T> item) {
    return new ListType<>(item, length, length, false);
  }

  @Override
  public Optional<List<T>> read(Node node, Reading reading) {
    if (!(node instanceof SequenceNode list)) {
      if (orSingle) {
        return item.read(node, reading).map(List::of);
      }
      reading.error(
          JobCode.WRONG_KIND,
          node,
          "expected a list but found " + Types.kindOf(node),
          "put each item on a line of its own after \"- \", or all of them in [ ]");
      return Optional.empty();
    }
    int size = list.getValue().size();
    if (size < shortest || size > longest) {
      reading.error(JobCode.WRONG_KIND, node, "expected " + length() + " but found " + size, "");
      return Optional.empty();
    }
    List<T> items = new ArrayList<>();
    for (Node each : list.getValue()) {
      item.read(each, reading).ifPresent(items::add);
    }
    return items.size() == size ? Optional.of(items) : Optional.empty();
  }

  private String length() {
    if (shortest == longest) {
      return shortest + " values in [ ]";
    }
    return longest == LONGEST ? "at least " + shortest : shortest + " to " + longest + " values";
  }

  @Override
  public String describe() {
    if (orSingle) {
      return item.describe() + "; or a list of them";
    }
    return shortest == longest
        ? "a list of " + shortest + ": " + item.describe()
        : "a list; each: " + item.describe();
  }

  @Override
  public Map<String, Object> schema() {
    Map<String, Object> list = new LinkedHashMap<>();
    list.put("type", "array");
    list.put("items", item.schema());
    list.put("minItems", shortest);
    if (longest < LONGEST) {
      list.put("maxItems", longest);
    }
    return orSingle ? Map.of("anyOf", List.of(item.schema(), list)) : list;
  }

  @Override
  public List<Section> sections() {
    return item.sections();
  }
}
