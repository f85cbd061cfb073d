package frieze.artwork.svg;

import frieze.artwork.ArtworkCode;
import frieze.artwork.Limits;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Gathers what is declared for an element: attributes, then style sheets by specificity and order,
 * then its own {@code style}, then important rules. Source: CSS 2.1, 6.4.1; SVG 1.1, 6.4.
 */
final class Cascade {
  private final SourceText source;
  private final Diagnostics found;
  private final List<StyleSheet.Rule> rules = new ArrayList<>();
  private final SelectorMatch match = new SelectorMatch();

  /** Reads all style sheets inside a drawing. */
  Cascade(SvgElement root, SourceText source, Diagnostics found) {
    this.source = source;
    this.found = found;
    collect(root);
    rules.sort(Comparator.comparingInt(r -> SelectorMatch.specificity(r.selector())));
  }

  private void collect(SvgElement element) {
    if (element.name().equals("style")) {
      String type = element.attribute("type", "text/css").trim();
      if (type.isEmpty() || type.equals("text/css")) {
        rules.addAll(StyleSheet.parse(element.text().toString(), complaints(element)));
      }
      if (rules.size() > Limits.MAX_STYLE_RULES) {
        throw tooBig(element, "there are more than " + Limits.MAX_STYLE_RULES + " style rules");
      }
    }
    for (SvgElement child : element.children()) {
      collect(child);
    }
  }

  private BadInputException tooBig(SvgElement element, String message) {
    return new BadInputException(
        Diagnostic.error(ArtworkCode.TOO_BIG, span(element), message, "simplify the style sheets"));
  }

  private SourceSpan span(SvgElement element) {
    return source.span(element.startOffset(), element.endOffset() - element.startOffset());
  }

  private StyleSheet.Complaints complaints(SvgElement element) {
    return new StyleSheet.Complaints() {
      @Override
      public void leftOut(String what) {
        found.warning(
            ArtworkCode.STYLE_LEFT_OUT,
            span(element),
            "a part of the style can't be read and is left out: " + what.strip(),
            "check that nothing is missing in the picture");
      }

      @Override
      public void importSkipped(String uri) {
        found.warning(
            ArtworkCode.LEFT_UNREAD,
            span(element),
            "the style sheet " + uri + " is outside the file and is not read",
            "put its rules into the drawing");
      }
    };
  }

  /** All properties declared for an element, by name, as written. */
  Map<String, String> declared(SvgElement element) {
    Map<String, String> declared = new HashMap<>();
    for (String property : Style.PROPERTIES) {
      String value = element.attribute(property);
      if (value != null) {
        declared.put(property, value.trim());
      }
    }
    List<StyleSheet.Rule> matching = matching(element);
    matching.forEach(rule -> declared.putAll(rule.normal()));
    String own = element.attribute("style");
    if (own != null && !own.isBlank()) {
      declared.putAll(StyleSheet.parseDeclarations(own, complaints(element)));
    }
    matching.forEach(rule -> declared.putAll(rule.important()));
    return declared;
  }

  private List<StyleSheet.Rule> matching(SvgElement element) {
    if (rules.isEmpty()) {
      return List.of();
    }
    List<StyleSheet.Rule> matching = new ArrayList<>();
    for (StyleSheet.Rule rule : rules) {
      if (match.matches(rule.selector(), element)) {
        matching.add(rule);
      }
    }
    if (match.steps() > Limits.MAX_STYLE_STEPS) {
      throw tooBig(element, "the style sheets take too long to apply");
    }
    return matching;
  }
}
