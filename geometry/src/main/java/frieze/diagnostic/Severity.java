package frieze.diagnostic;

/** How much a diagnostic or a finding matters. */
public enum Severity {
  /** Blocks writing. */
  ERROR,
  /** Shown, and the work goes on. */
  WARNING,
  /** Worth knowing. */
  NOTE
}
