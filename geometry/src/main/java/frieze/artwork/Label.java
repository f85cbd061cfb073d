package frieze.artwork;

import java.util.List;

/**
 * The names by which a piece can be picked.
 *
 * @param id as in the file; empty if it has none
 * @param classes the class names on it and on the groups around it, outermost first
 * @param groups ids and labels of the groups around it, or the name of its layer
 * @param colours of its area and its line, as {@code #rrggbb}
 */
public record Label(String id, List<String> classes, List<String> groups, List<String> colours) {
  /** No name at all. */
  public static final Label NONE = new Label("", List.of(), List.of(), List.of());

  public Label {
    classes = List.copyOf(classes);
    groups = List.copyOf(groups);
    colours = List.copyOf(colours);
  }

  /** Whether a word is its id, one of its classes, groups or colours. */
  public boolean answersTo(String word) {
    return id.equals(word)
        || classes.contains(word)
        || groups.contains(word)
        || Colours.hex(word).filter(colours::contains).isPresent();
  }
}
