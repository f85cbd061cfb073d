package frieze.keys;

import frieze.diagnostic.SourceSpan;

/** A value and where it is written. */
public record Located<T>(T value, SourceSpan where) {}
