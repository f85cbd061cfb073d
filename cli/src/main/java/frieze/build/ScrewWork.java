package frieze.build;

import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.Intent;
import frieze.design.Intents;
import frieze.design.Work;
import frieze.diagnostic.Diagnostics;
import frieze.job.Job;
import frieze.screw.Movement;
import frieze.screw.ScrewCheck;
import frieze.screw.Screws;
import frieze.shop.Material;
import java.util.List;

/** Checks the screws of a panel against all else that is cut. */
final class ScrewWork {
  private ScrewWork() {}

  static void check(Screws screws, Job.PanelJob asked, Design design, Diagnostics found) {
    Work pilots = screws.bore();
    List<Work> others = design.work().stream().filter(w -> !w.equals(pilots)).toList();
    Design face = new Design(design.panel(), design.motifs(), design.placements(), others);
    List<Intent> intents = Intents.of(face, Tolerances.DEFAULT.flattenMm());
    ScrewCheck.pilots(screws, asked.stock(), intents, found);
    Material.Kind kind = asked.stock().material().kind();
    if (kind == Material.Kind.HARDWOOD || kind == Material.Kind.SOFTWOOD) {
      ScrewCheck.movement(
          screws, Movement.of(asked.insert().sitting(), screws, design.panel()), found);
    }
  }
}
