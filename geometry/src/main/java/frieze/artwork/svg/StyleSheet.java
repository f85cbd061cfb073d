package frieze.artwork.svg;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.apache.batik.css.parser.DefaultDocumentHandler;
import org.apache.batik.css.parser.Parser;
import org.w3c.css.sac.CSSException;
import org.w3c.css.sac.CSSParseException;
import org.w3c.css.sac.ErrorHandler;
import org.w3c.css.sac.InputSource;
import org.w3c.css.sac.LexicalUnit;
import org.w3c.css.sac.SACMediaList;
import org.w3c.css.sac.Selector;
import org.w3c.css.sac.SelectorList;

/**
 * Reads style sheets and {@code style} attributes into rules.
 *
 * <p>The text is parsed by Batik; a rule or declaration that it can't read is reported and left
 * out, as CSS 2.1, 4.2 says.
 */
final class StyleSheet extends DefaultDocumentHandler implements ErrorHandler {
  /** Hears what is left out. */
  interface Complaints {
    void leftOut(String what);

    void importSkipped(String uri);
  }

  /** The declarations of one rule, for one of its selectors. */
  record Rule(Selector selector, Map<String, String> normal, Map<String, String> important) {}

  /** Properties of which more than the first word matters. */
  private static final Set<String> LISTS =
      Set.of("transform", "transform-origin", "stroke-dasharray", "font-family");

  private final Complaints complaints;
  private final List<Rule> rules = new ArrayList<>();
  private Map<String, String> normal = new LinkedHashMap<>();
  private Map<String, String> important = new LinkedHashMap<>();
  private int skipDepth;
  private boolean inFontFace;

  private StyleSheet(Complaints complaints) {
    this.complaints = complaints;
  }

  /** Reads the rules of a style sheet, in the order written. */
  static List<Rule> parse(String css, Complaints complaints) {
    StyleSheet sheet = new StyleSheet(complaints);
    sheet.run(css, false);
    return sheet.rules;
  }

  /** Reads the value of a {@code style} attribute; its important declarations come last. */
  static Map<String, String> parseDeclarations(String css, Complaints complaints) {
    StyleSheet sheet = new StyleSheet(complaints);
    sheet.run(css, true);
    Map<String, String> all = new LinkedHashMap<>(sheet.normal);
    all.putAll(sheet.important);
    return all;
  }

  private void run(String css, boolean declarationsOnly) {
    Parser parser = new Parser();
    parser.setLocale(Locale.ROOT);
    parser.setDocumentHandler(this);
    parser.setErrorHandler(this);
    InputSource source = new InputSource(new StringReader(css));
    try {
      if (declarationsOnly) {
        parser.parseStyleDeclaration(source);
      } else {
        parser.parseStyleSheet(source);
      }
    } catch (CSSException | java.io.IOException e) {
      complaints.leftOut(String.valueOf(e.getMessage()));
    }
  }

  @Override
  public void startSelector(SelectorList selectors) {
    normal = new LinkedHashMap<>();
    important = new LinkedHashMap<>();
  }

  @Override
  public void endSelector(SelectorList selectors) {
    if (skipDepth > 0) {
      return;
    }
    for (int i = 0; i < selectors.getLength(); i++) {
      rules.add(new Rule(selectors.item(i), Map.copyOf(normal), Map.copyOf(important)));
    }
  }

  @Override
  public void startMedia(SACMediaList media) {
    if (skipDepth > 0 || !appliesToScreen(media)) {
      skipDepth++;
    }
  }

  @Override
  public void endMedia(SACMediaList media) {
    if (skipDepth > 0) {
      skipDepth--;
    }
  }

  private static boolean appliesToScreen(SACMediaList media) {
    for (int i = 0; i < media.getLength(); i++) {
      String medium = media.item(i).toLowerCase(Locale.ROOT);
      if (medium.equals("all") || medium.equals("screen")) {
        return true;
      }
    }
    return media.getLength() == 0;
  }

  @Override
  public void startFontFace() {
    inFontFace = true;
  }

  @Override
  public void endFontFace() {
    inFontFace = false;
  }

  @Override
  public void importStyle(String uri, SACMediaList media, String defaultNamespace) {
    complaints.importSkipped(uri);
  }

  @Override
  public void property(String name, LexicalUnit value, boolean isImportant) {
    if (inFontFace) {
      return;
    }
    Map<String, String> into = isImportant ? important : normal;
    String property = name.toLowerCase(Locale.ROOT);
    if (property.equals("font")) {
      FontShorthand.expand(value, into);
      return;
    }
    String text = LISTS.contains(property) ? CssText.everything(value) : CssText.first(value);
    if (text != null) {
      into.put(property, text);
    }
  }

  @Override
  public void warning(CSSParseException e) {
    complaints.leftOut(String.valueOf(e.getMessage()));
  }

  @Override
  public void error(CSSParseException e) {
    complaints.leftOut(String.valueOf(e.getMessage()));
  }

  @Override
  public void fatalError(CSSParseException e) {
    complaints.leftOut(String.valueOf(e.getMessage()));
  }
}
