package frieze.wood;

/** How a board was sawn from the log: the growth rings as seen on its end. */
public enum Sawn {
  /** Rings nearly parallel to the face: the width moves tangentially. */
  FLAT,
  /** Rings nearly square to the face: the width moves radially, about half as much. */
  QUARTER
}
