/**
 * Tables of keys: what a job or a shop file may say, written once and read by everybody.
 *
 * <p>In: the text of a file, or one value that somebody wrote. Out: typed values that know their
 * line and column, or diagnostics with a hint. Nothing here knows what a key is good for.
 *
 * <p>Read {@link frieze.keys.Key} (one row of a table), {@link frieze.keys.Section} (the rows that
 * belong together), {@link frieze.keys.Type} (what a value may be) and {@link frieze.keys.Types}
 * (the kinds that are used over and over), {@link frieze.keys.QuantityText} (numbers with units),
 * {@link frieze.keys.YamlText} (from text to nodes) and {@link frieze.keys.Values} (what was read).
 */
@NullMarked
package frieze.keys;

import org.jspecify.annotations.NullMarked;
