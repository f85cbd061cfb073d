/**
 * The commands, and the only place that touches the disk.
 *
 * <p>In: a command line. Out: data on standard output, messages on standard error, files, and an
 * {@link frieze.cli.ExitCode}. Read {@link frieze.cli.Main}, {@code Frieze} (where every exception
 * becomes an exit code), {@code MakeCommand}, {@code DryRunCommand}, {@code Messages}.
 */
@NullMarked
package frieze.cli;

import org.jspecify.annotations.NullMarked;
