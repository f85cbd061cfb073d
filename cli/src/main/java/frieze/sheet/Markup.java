package frieze.sheet;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Writes HTML and SVG. Every text and every value is escaped; tags are closed in their order.
 *
 * <p>Not safe for use by several threads.
 */
public final class Markup {
  private final StringBuilder out = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();

  /** Opens an element; attributes are names and values in turn. */
  public Markup open(String tag, String... attributes) {
    start(tag, attributes).append('>');
    open.push(tag);
    return this;
  }

  /** Adds an element without content, closed as XML asks for. */
  public Markup empty(String tag, String... attributes) {
    start(tag, attributes).append("/>");
    return this;
  }

  /** Adds an element with text only. */
  Markup element(String tag, String text, String... attributes) {
    return open(tag, attributes).text(text).close();
  }

  private StringBuilder start(String tag, String... attributes) {
    if (attributes.length % 2 != 0) {
      throw new IllegalArgumentException("attributes must be names and values in turn");
    }
    out.append('<').append(tag);
    for (int i = 0; i < attributes.length; i += 2) {
      out.append(' ').append(attributes[i]).append("=\"");
      escape(attributes[i + 1]);
      out.append('"');
    }
    return out;
  }

  Markup text(String text) {
    escape(text);
    return this;
  }

  /** Adds markup that is made elsewhere. */
  public Markup raw(String markup) {
    out.append(markup);
    return this;
  }

  public Markup line() {
    out.append('\n');
    return this;
  }

  public Markup close() {
    out.append("</").append(open.pop()).append('>');
    return this;
  }

  private void escape(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> out.append("&amp;");
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '"' -> out.append("&quot;");
        default -> out.append(c);
      }
    }
  }

  @Override
  public String toString() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("not closed: " + open);
    }
    return out.toString();
  }
}
