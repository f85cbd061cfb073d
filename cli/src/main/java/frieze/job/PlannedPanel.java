package frieze.job;

import frieze.design.Design;
import frieze.motion.Sequence;
import frieze.plan.Plan;
import frieze.shop.Setup;

/** A panel and what a machine is to do for it, before it is written for a controller. */
record PlannedPanel(Job.PanelJob asked, Setup setup, Design design, Plan plan, Sequence sequence) {}
