package frieze.build;

import frieze.design.Work;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import frieze.job.Job;
import frieze.keys.JobCode;
import frieze.post.Post;
import frieze.shop.FinishAllowance;
import frieze.shop.Machine;

/** Checks that the machine of a job carries what its work needs. */
final class TorchOrSpindle {
  /** The torch travels at least this much higher than it pierces. */
  private static final double ABOVE_PIERCE_MM = 5;

  private TorchOrSpindle() {}

  /**
   * Checks all work of a job.
   *
   * @throws frieze.diagnostic.BadInputException with all work that the machine can't do
   */
  static void check(Job job, Post post) {
    Diagnostics found = new Diagnostics();
    boolean torch = post.capabilities().torch().present();
    if (!torch && job.machine().spindle().equals(Machine.Spindle.NONE)) {
      found.error(
          JobCode.UNSUITABLE_POST,
          SourceSpan.file(job.source()),
          "the machine "
              + job.machine().name()
              + " has no spindle, and the post "
              + post.id()
              + " drives one",
          "give it a spindle in the shop file, or a post for a torch");
    }
    for (Job.PanelJob panel : job.panels()) {
      for (Work work : panel.work()) {
        check(work, panel, post, torch, found);
      }
    }
    found.throwIfErrors();
  }

  private static void check(
      Work work, Job.PanelJob panel, Post post, boolean torch, Diagnostics found) {
    boolean needsTorch = work instanceof Work.TorchCut;
    if (needsTorch && !torch) {
      found.error(
          JobCode.TORCH_AND_SPINDLE,
          work.where(),
          "torchcut needs a torch, and the post " + post.id() + " drives a spindle",
          "name a plasma table as the machine of the job");
    } else if (!needsTorch && torch) {
      found.error(
          JobCode.TORCH_AND_SPINDLE,
          work.where(),
          work.operation() + " needs a spindle, and the post " + post.id() + " drives a torch",
          "name a router as the machine, and make a job of its own for the plasma table");
    } else if (needsTorch && !panel.allowance().equals(FinishAllowance.NONE)) {
      found.error(
          JobCode.KEYS_EXCLUDE,
          panel.where(),
          "an allowance is for wood that is charred, brushed or sanded, and a torch cuts steel",
          "leave it out; a kerf is made good by itself");
    } else if (work instanceof Work.TorchCut torchCut) {
      double least = torchCut.torch().row().pierceHeightMm() + ABOVE_PIERCE_MM;
      if (panel.clearanceMm() < least) {
        found.error(
            JobCode.BAD_CLEARANCE,
            panel.where(),
            "the torch travels "
                + Amounts.length(panel.clearanceMm())
                + " above the sheet, and cut pieces may tip up",
            "clearance: " + Amounts.length(least) + " or more; 15 to 25 mm is common practice");
      }
    }
  }
}
