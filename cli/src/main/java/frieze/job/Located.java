package frieze.job;

import frieze.diagnostic.SourceSpan;

/** A value and where it is written. */
record Located<T>(T value, SourceSpan where) {}
