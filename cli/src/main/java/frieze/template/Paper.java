package frieze.template;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The papers that a template is printed on. Source: ISO 216 and ANSI/ASME Y14.1, from memory. */
public enum Paper {
  A4("A4", 210, 297),
  LETTER("Letter", 215.9, 279.4);

  private final String title;
  private final double widthMm;
  private final double heightMm;

  Paper(String title, double widthMm, double heightMm) {
    this.title = title;
    this.widthMm = widthMm;
    this.heightMm = heightMm;
  }

  public String title() {
    return title;
  }

  /** The shorter side. */
  double widthMm() {
    return widthMm;
  }

  /** The longer side. */
  double heightMm() {
    return heightMm;
  }

  /** The paper of a name, in whatever case. */
  public static Optional<Paper> named(String name) {
    String wanted = name.strip().toLowerCase(Locale.ROOT);
    return Stream.of(values())
        .filter(p -> p.title.toLowerCase(Locale.ROOT).equals(wanted))
        .findFirst();
  }
}
