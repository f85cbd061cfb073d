package frieze.design;

import frieze.layout.Panel;
import frieze.layout.Placement;
import java.util.List;

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

  public List<Placement> placementsOf(String motif) {
    return placements.stream().filter(p -> p.motif().equals(motif)).toList();
  }
}
