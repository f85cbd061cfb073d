package frieze.design;

/** The sides of a panel, counter-clockwise: each begins where the one before it ends. */
public enum PanelSide {
  BOTTOM,
  RIGHT,
  TOP,
  LEFT
}
