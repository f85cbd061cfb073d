package frieze.artwork.svg;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One element of an SVG file, with the place of its start tag.
 *
 * <p>Attributes of the XLink name space are named {@code xlink:href} and so on; those of other name
 * spaces are not kept.
 */
final class SvgElement {
  private final String name;
  private final @Nullable SvgElement parent;
  private final Map<String, String> attributes = new LinkedHashMap<>();
  private final List<SvgElement> children = new ArrayList<>();
  private final StringBuilder text = new StringBuilder();
  private final List<Words> words = new ArrayList<>();
  private final int startOffset;
  private final int endOffset;

  /**
   * Makes an element without attributes.
   *
   * @param startOffset of the start tag's opening bracket
   * @param endOffset behind the start tag's closing bracket
   */
  SvgElement(String name, @Nullable SvgElement parent, int startOffset, int endOffset) {
    this.name = name;
    this.parent = parent;
    this.startOffset = startOffset;
    this.endOffset = endOffset;
    if (parent != null) {
      parent.children.add(this);
    }
  }

  /** The local name in the SVG name space; empty for an element of another one. */
  String name() {
    return name;
  }

  /** Whether it holds letters. */
  boolean isText() {
    return name.equals("text") || name.equals("tspan");
  }

  @Nullable SvgElement parent() {
    return parent;
  }

  List<SvgElement> children() {
    return children;
  }

  Map<String, String> attributes() {
    return attributes;
  }

  @Nullable String attribute(String attributeName) {
    return attributes.get(attributeName);
  }

  String attribute(String attributeName, String otherwise) {
    return attributes.getOrDefault(attributeName, otherwise);
  }

  /** The class names, in the order written. */
  List<String> classes() {
    String value = attribute("class", "").trim();
    return value.isEmpty() ? List.of() : List.of(value.split("\\s+"));
  }

  /** The id, the label and the title of a group or a text; nothing for other elements. */
  List<String> groupNames() {
    if (!name.equals("g") && !name.equals("text")) {
      return List.of();
    }
    List<String> names = new ArrayList<>();
    Stream.of(attribute("id", ""), attribute("label", ""), attribute("aria-label", ""), title())
        .filter(n -> !n.isBlank() && !names.contains(n.strip()))
        .forEach(n -> names.add(n.strip()));
    return names;
  }

  private String title() {
    for (SvgElement child : children) {
      if (child.name.equals("title")) {
        return child.text.toString();
      }
    }
    return "";
  }

  /** The characters directly inside; kept for style sheets and titles only. */
  StringBuilder text() {
    return text;
  }

  /**
   * Characters of a text.
   *
   * @param beforeChild the number of the child that they come before
   */
  record Words(int beforeChild, String text) {}

  /** The characters between the children; kept for text only. */
  List<Words> words() {
    return words;
  }

  int startOffset() {
    return startOffset;
  }

  int endOffset() {
    return endOffset;
  }
}
