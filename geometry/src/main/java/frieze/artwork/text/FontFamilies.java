package frieze.artwork.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * The fonts at hand: those that come with Frieze, or one font that a job names.
 *
 * <p>The bundled families are Liberation Sans, Serif and Mono 2.00.5, each in four faces, under the
 * SIL Open Font License 1.1, whose text is beside them in their library.
 */
public final class FontFamilies {
  /** What comes with Frieze. */
  public static final FontFamilies BUNDLED = new FontFamilies(null);

  private static final String PREFIX = "liberation ";
  private static final Map<String, FontFace> LOADED = new ConcurrentHashMap<>();

  private final @Nullable FontFace only;

  private FontFamilies(@Nullable FontFace only) {
    this.only = only;
  }

  /** One face for all text, whatever it asks for. */
  public static FontFamilies only(FontFace face) {
    return new FontFamilies(face);
  }

  /**
   * A face for some text.
   *
   * @param asked whether the text asked for it, by name or by kind
   * @param bundled whether it comes with Frieze
   */
  public record Choice(FontFace face, boolean asked, boolean bundled) {}

  /**
   * Chooses a face.
   *
   * @param families as the drawing names them, the first one at hand wins; none for any
   */
  public Choice choose(List<String> families, boolean bold, boolean italic) {
    if (only != null) {
      return new Choice(only, true, false);
    }
    for (String family : families) {
      String kind = kind(family.toLowerCase(Locale.ROOT));
      if (!kind.isEmpty()) {
        return new Choice(bundled(kind, bold, italic), true, true);
      }
    }
    String likely = families.isEmpty() ? "Sans" : likely(families.get(0).toLowerCase(Locale.ROOT));
    return new Choice(bundled(likely, bold, italic), families.isEmpty(), true);
  }

  /** The bundled family of that name or kind; empty for another one. */
  private static String kind(String family) {
    return switch (family.startsWith(PREFIX) ? family.substring(PREFIX.length()) : family) {
      case "sans-serif", "sans", "system-ui", "ui-sans-serif" -> "Sans";
      case "serif", "ui-serif" -> "Serif";
      case "monospace", "mono", "ui-monospace" -> "Mono";
      default -> "";
    };
  }

  /** What an unknown font most likely looks like, by its name. */
  private static String likely(String family) {
    if (family.contains("mono") || family.contains("code")) {
      return "Mono";
    }
    boolean serif = family.contains("serif") || family.contains("roman");
    return serif && !family.contains("sans") ? "Serif" : "Sans";
  }

  private static FontFace bundled(String kind, boolean bold, boolean italic) {
    String style = (bold ? "Bold" : "") + (italic ? "Italic" : "");
    return LOADED.computeIfAbsent(
        kind + "-" + (style.isEmpty() ? "Regular" : style), FontFamilies::load);
  }

  private static FontFace load(String face) {
    String resource = "/liberation/Liberation" + face + ".ttf";
    try (InputStream in = FontFamilies.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IOException(resource + " is not on the class path");
      }
      return FontFace.read(in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
