package frieze.artwork.svg;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.w3c.css.sac.AttributeCondition;
import org.w3c.css.sac.CombinatorCondition;
import org.w3c.css.sac.Condition;
import org.w3c.css.sac.ConditionalSelector;
import org.w3c.css.sac.DescendantSelector;
import org.w3c.css.sac.ElementSelector;
import org.w3c.css.sac.Selector;
import org.w3c.css.sac.SiblingSelector;
import org.w3c.css.sac.SimpleSelector;

/**
 * Says whether a selector of CSS 2.1 picks an element, and how specific it is.
 *
 * <p>Of the pseudo-classes only {@code :root} and {@code :first-child} can match; the others need a
 * pointer or a history. Source: CSS 2.1, chapter 5 and 6.4.3.
 */
final class SelectorMatch {
  private static final int ID_WEIGHT = 1_000_000;
  private static final int CLASS_WEIGHT = 1_000;

  private int steps;

  /** How many comparisons have been made. */
  int steps() {
    return steps;
  }

  boolean matches(Selector selector, SvgElement element) {
    steps++;
    return switch (selector.getSelectorType()) {
      case Selector.SAC_ANY_NODE_SELECTOR -> true;
      case Selector.SAC_ELEMENT_NODE_SELECTOR -> {
        String name = ((ElementSelector) selector).getLocalName();
        yield name == null || name.equals("*") || name.equals(element.name());
      }
      case Selector.SAC_CONDITIONAL_SELECTOR -> {
        ConditionalSelector s = (ConditionalSelector) selector;
        yield matches(s.getSimpleSelector(), element) && holds(s.getCondition(), element);
      }
      case Selector.SAC_CHILD_SELECTOR -> {
        DescendantSelector s = (DescendantSelector) selector;
        SvgElement parent = element.parent();
        yield parent != null
            && matches(s.getSimpleSelector(), element)
            && matches(s.getAncestorSelector(), parent);
      }
      case Selector.SAC_DESCENDANT_SELECTOR -> matchesBelow((DescendantSelector) selector, element);
      case Selector.SAC_DIRECT_ADJACENT_SELECTOR -> {
        SiblingSelector s = (SiblingSelector) selector;
        SvgElement before = siblingBefore(element);
        yield before != null
            && matches(s.getSiblingSelector(), element)
            && matches(s.getSelector(), before);
      }
      default -> false;
    };
  }

  private boolean matchesBelow(DescendantSelector selector, SvgElement element) {
    SimpleSelector own = selector.getSimpleSelector();
    if (!matches(own, element)) {
      return false;
    }
    for (SvgElement above = element.parent(); above != null; above = above.parent()) {
      if (matches(selector.getAncestorSelector(), above)) {
        return true;
      }
    }
    return false;
  }

  private @Nullable SvgElement siblingBefore(SvgElement element) {
    SvgElement parent = element.parent();
    int index = parent == null ? 0 : parent.children().indexOf(element);
    steps += index;
    return parent == null || index == 0 ? null : parent.children().get(index - 1);
  }

  private boolean holds(Condition condition, SvgElement element) {
    return switch (condition.getConditionType()) {
      case Condition.SAC_AND_CONDITION -> {
        CombinatorCondition both = (CombinatorCondition) condition;
        yield holds(both.getFirstCondition(), element) && holds(both.getSecondCondition(), element);
      }
      case Condition.SAC_CLASS_CONDITION -> element.classes().contains(value(condition));
      case Condition.SAC_ID_CONDITION -> value(condition).equals(element.attribute("id"));
      case Condition.SAC_ATTRIBUTE_CONDITION -> attributeHolds(condition, element);
      case Condition.SAC_ONE_OF_ATTRIBUTE_CONDITION ->
          words(condition, element).contains(value(condition));
      case Condition.SAC_BEGIN_HYPHEN_ATTRIBUTE_CONDITION -> {
        String actual = element.attribute(name(condition), "");
        yield actual.equals(value(condition)) || actual.startsWith(value(condition) + "-");
      }
      case Condition.SAC_PSEUDO_CLASS_CONDITION ->
          switch (value(condition)) {
            case "root" -> element.parent() == null;
            case "first-child" -> element.parent() != null && siblingBefore(element) == null;
            default -> false;
          };
      default -> false;
    };
  }

  private static String name(Condition condition) {
    return String.valueOf(((AttributeCondition) condition).getLocalName());
  }

  private static String value(Condition condition) {
    return String.valueOf(((AttributeCondition) condition).getValue());
  }

  private static boolean attributeHolds(Condition condition, SvgElement element) {
    String wanted = ((AttributeCondition) condition).getValue();
    String actual = element.attribute(name(condition));
    return actual != null && (wanted == null || wanted.equals(actual));
  }

  private static List<String> words(Condition condition, SvgElement element) {
    return Arrays.asList(element.attribute(name(condition), "").trim().split("\\s+"));
  }

  /** A number that orders selectors by how specific they are. */
  static int specificity(Selector selector) {
    return switch (selector.getSelectorType()) {
      case Selector.SAC_ELEMENT_NODE_SELECTOR -> {
        String name = ((ElementSelector) selector).getLocalName();
        yield name == null || name.equals("*") ? 0 : 1;
      }
      case Selector.SAC_CONDITIONAL_SELECTOR -> {
        ConditionalSelector s = (ConditionalSelector) selector;
        yield specificity(s.getSimpleSelector()) + specificity(s.getCondition());
      }
      case Selector.SAC_CHILD_SELECTOR, Selector.SAC_DESCENDANT_SELECTOR -> {
        DescendantSelector s = (DescendantSelector) selector;
        yield specificity(s.getSimpleSelector()) + specificity(s.getAncestorSelector());
      }
      case Selector.SAC_DIRECT_ADJACENT_SELECTOR -> {
        SiblingSelector s = (SiblingSelector) selector;
        yield specificity(s.getSiblingSelector()) + specificity(s.getSelector());
      }
      default -> 0;
    };
  }

  private static int specificity(Condition condition) {
    return switch (condition.getConditionType()) {
      case Condition.SAC_AND_CONDITION -> {
        CombinatorCondition both = (CombinatorCondition) condition;
        yield specificity(both.getFirstCondition()) + specificity(both.getSecondCondition());
      }
      case Condition.SAC_ID_CONDITION -> ID_WEIGHT;
      default -> CLASS_WEIGHT;
    };
  }
}
