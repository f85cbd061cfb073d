package frieze.design;

import frieze.layout.Panel;
import frieze.layout.Placement;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Everything that is wanted on one panel. */
public record Design(Panel panel, List<Motif> motifs, List<Placement> placements, List<Work> work) {
  public Design {
    motifs = List.copyOf(motifs);
    placements = List.copyOf(placements);
    work = List.copyOf(work);
  }

  /**
   * The motif of a name.
   *
   * @throws IllegalArgumentException if there is none
   */
  public Motif motif(String name) {
    return motifs.stream()
        .filter(m -> m.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no motif named " + name));
  }

  /** The motif in the shape that a placement has. */
  public Motif motifAt(Placement placement) {
    return motif(placement.motif()).variant(placement.variant());
  }

  /** The shapes in which a motif is placed, each with its placements, by number. */
  public SortedMap<Integer, List<Placement>> shapesOf(String motif) {
    SortedMap<Integer, List<Placement>> shapes = new TreeMap<>();
    for (Placement p : placementsOf(motif)) {
      shapes.computeIfAbsent(p.variant(), v -> new ArrayList<>()).add(p);
    }
    return shapes;
  }

  public List<Placement> placementsOf(String motif) {
    return placements.stream().filter(p -> p.motif().equals(motif)).toList();
  }
}
