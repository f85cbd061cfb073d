package frieze.sheet;

import java.util.List;

/**
 * What is said before every job: general information, no legal or professional advice, deferring to
 * local codes and licensed practice. Written for this project.
 */
final class Cautions {
  static final String FIRST =
      "Read the manuals of the machine, the tools and the power supply. Follow local codes and your"
          + " employer's rules, and have a qualified person review the job. These notes do not"
          + " replace training.";

  static final String MATCH =
      "Units, zero point, material size, tool and depth on this sheet must match the machine before"
          + " you start.";

  static final List<String> ALWAYS =
      List.of(
          "First run in air: set the zero of Z high above the stock, leave the spindle off, and watch"
              + " the whole path with a hand on the emergency stop. Then set the true zero again.",
          "Know where the emergency stop and the main disconnect are, and test them. Never leave a"
              + " running machine unattended.",
          "Times and depths are estimates. The simulation does not see warped stock, worn tools or"
              + " a part that moves.");

  static final List<String> ROUTING =
      List.of(
          "Eyes and ears: safety glasses with side shields, hearing protection; a face shield for"
              + " large cutters.",
          "Dust: extraction at the cutter, and a respirator suited to wood dust where that is not"
              + " enough. Some woods and MDF irritate or sensitise. Fine dust burns: no ignition"
              + " source, no blowing down with compressed air, never metal sparks and wood dust"
              + " together.",
          "Workholding: clamps, screws or vacuum outside the tool's path. Check every screw against"
              + " the drawing. Keep the tabs, so that no part comes loose.",
          "Tool: the right diameter, sharp, clean, fully seated in the right collet, sticking out as"
              + " little as the depth allows, below the speed marked on it.",
          "Hair and clothes tied back. No gloves near a turning spindle. No reaching in until it has"
              + " stopped. Lock out the machine before you change a tool.",
          "A dull tool or too slow a feed burns wood; hot dust can smoulder in the collector for"
              + " hours. Look at the bin and at the spoilboard before you leave.");

  /** The usual cautions of plasma cutting; common knowledge of the trade, in our own words. */
  static final List<String> TORCH =
      List.of(
          "Arc: it burns eyes and skin. A shade that the power supply's manual names, covered skin,"
              + " screens for others. Hearing protection.",
          "Fume: extraction or a water table that works, and a respirator for metal fume where that"
              + " is not enough. Zinc, chrome and paint give off worse: ask before you cut them.",
          "Fire: nothing that burns within the reach of sparks, an extinguisher at hand, a look"
              + " round half an hour later. Never wood dust and sparks in one room.",
          "Electricity: the voltage is high enough to kill. The work clamp on clean metal of the"
              + " sheet, dry gloves and ground, power off before you touch the torch or its parts.",
          "Hot and sharp: parts, dross and slats stay hot for long; edges cut. Pieces that drop can"
              + " tip up and catch the torch: watch, with a hand on the stop.",
          "Nozzle and electrode: look at them before you start and after the number of pierces"
              + " above; worn ones widen the kerf.");

  private Cautions() {}
}
