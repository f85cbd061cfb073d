package frieze.artwork.dxf;

import frieze.artwork.ArtworkCode;
import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Counts what is not drawn. */
final class DxfLeftOut {
  private static final int MOST_KINDS = 100;

  private static final Set<String> TEXTS = Set.of("TEXT", "MTEXT", "ATTRIB");

  private record Kind(int count, SourceSpan first) {}

  private final Map<String, Kind> kinds = new TreeMap<>();
  private int hidden;
  private int wide;
  private @Nullable SourceSpan firstWide;

  /** Counts an entity of a kind that is not understood. */
  void count(DxfEntity entity, String kind) {
    if (kinds.size() < MOST_KINDS || kinds.containsKey(kind)) {
      kinds.merge(
          kind,
          new Kind(1, entity.where()),
          (before, now) -> new Kind(before.count() + 1, before.first()));
    }
  }

  /** Counts an entity that does not show: on a hidden layer, on paper, or without size. */
  void countHidden() {
    hidden++;
  }

  /** Counts a polyline that is drawn, but without its width. */
  void countWide(DxfEntity entity) {
    wide++;
    firstWide = firstWide == null ? entity.where() : firstWide;
  }

  /** Adds one warning for each kind, at its first entity, and a note about what does not show. */
  void report(String source, Diagnostics found) {
    kinds.forEach(
        (name, kind) ->
            found.warning(
                ArtworkCode.ENTITIES_LEFT_OUT,
                kind.first(),
                kind.count() + " " + name + (kind.count() == 1 ? " is" : " are") + " left out",
                TEXTS.contains(name)
                    ? "turn letters that shall be cut into outlines in the drawing program"
                    : "turn what shall be cut into lines, arcs or polylines"));
    if (firstWide != null) {
      found.warning(
          ArtworkCode.ENTITIES_LEFT_OUT,
          firstWide,
          "the width of "
              + wide
              + (wide == 1 ? " polyline" : " polylines")
              + " is left out; the middle of the line is taken",
          "draw its edges if they shall be cut");
    }
    if (hidden > 0) {
      found.note(
          ArtworkCode.INVISIBLE_LEFT_OUT,
          SourceSpan.file(source),
          hidden
              + (hidden == 1 ? " entity is" : " entities are")
              + " hidden, on paper or of no size, and left out");
    }
  }
}
