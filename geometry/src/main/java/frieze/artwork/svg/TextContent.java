package frieze.artwork.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The letters of a text in the order they are read, with their styles.
 *
 * <p>Source: SVG 2, 11.7: line ends and tabs become spaces; unless space is kept, one of several
 * spaces stays, and none at the start and the end.
 */
final class TextContent {
  /** What a text meets in its elements. */
  interface Walk {
    /** The place inside a part of the text; empty if it is not displayed. */
    Optional<WalkContext> inside(SvgElement part, WalkContext outer);

    /** Hears of an element that is no text. */
    void leftOut(SvgElement element);

    /** Counts one letter more, which are bounded. */
    void count(SvgElement part);
  }

  /** An element of the text, and its style. */
  record Level(SvgElement element, WalkContext context) {}

  /**
   * One character.
   *
   * @param levels the elements it is in, the text itself first
   */
  record Letter(int codePoint, List<Level> levels) {
    Level innermost() {
      return levels.get(levels.size() - 1);
    }

    WalkContext context() {
      return innermost().context();
    }

    FontStyle font() {
      return context().style().font();
    }

    boolean isLooseSpace() {
      return codePoint == ' ' && !font().keepsSpace();
    }
  }

  private final Walk walk;
  private final List<Letter> letters = new ArrayList<>();

  private TextContent(Walk walk) {
    this.walk = walk;
  }

  /** The letters inside a {@code text} element. */
  static List<Letter> of(SvgElement text, WalkContext context, Walk walk) {
    TextContent content = new TextContent(walk);
    content.gather(text, List.of(new Level(text, context)));
    List<Letter> letters = content.letters;
    while (!letters.isEmpty() && letters.get(letters.size() - 1).isLooseSpace()) {
      letters.remove(letters.size() - 1);
    }
    return letters;
  }

  private void gather(SvgElement element, List<Level> levels) {
    int next = 0;
    List<SvgElement.Words> words = element.words();
    for (int i = 0; i <= element.children().size(); i++) {
      while (next < words.size() && words.get(next).beforeChild() == i) {
        words.get(next++).text().codePoints().forEach(c -> add(c, levels));
      }
      if (i < element.children().size()) {
        gatherPart(element.children().get(i), levels);
      }
    }
  }

  private void gatherPart(SvgElement part, List<Level> levels) {
    if (!part.name().equals("tspan") && !part.name().equals("a")) {
      walk.leftOut(part);
      return;
    }
    Optional<WalkContext> inside = walk.inside(part, levels.get(levels.size() - 1).context());
    if (inside.isPresent()) {
      List<Level> deeper = new ArrayList<>(levels);
      deeper.add(new Level(part, inside.get()));
      gather(part, List.copyOf(deeper));
    }
  }

  private void add(int codePoint, List<Level> levels) {
    boolean space = codePoint < 0x80 && NumberScanner.isSpace((char) codePoint);
    Letter letter = new Letter(space ? ' ' : codePoint, levels);
    boolean repeated = letters.isEmpty() || letters.get(letters.size() - 1).isLooseSpace();
    if (!letter.isLooseSpace() || !repeated) {
      walk.count(letter.innermost().element());
      letters.add(letter);
    }
  }
}
