package frieze.cli;

import frieze.keys.OptionText;
import java.util.List;
import java.util.function.Function;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/**
 * Reads the texts of a command's options, and blames the option when one can't be read.
 *
 * @param command the command that the options belong to
 * @param units what a bare number means: mm or in
 */
record OptionReader(CommandSpec command, String units) {
  /** Whether a bare number is inches. */
  boolean inches() {
    if (!units.equals("mm") && !units.equals("in")) {
      throw wrong("--units", "must be mm or in");
    }
    return units.equals("in");
  }

  /** Lengths in millimetres, as many as are wanted. */
  List<Double> lengthsMm(String option, String text, int count) {
    boolean inches = inches();
    return read(option, text, t -> OptionText.lengthsMm(t, inches, count));
  }

  /** A height or the like in millimetres, more than 0. */
  double heightMm(String option, String text) {
    boolean inches = inches();
    return read(option, text, t -> OptionText.heightMm(t, inches));
  }

  <T> T read(String option, String text, Function<String, T> reader) {
    try {
      return reader.apply(text);
    } catch (IllegalArgumentException e) {
      throw wrong(option, String.valueOf(e.getMessage()));
    }
  }

  ParameterException wrong(String option, String message) {
    return new ParameterException(command.commandLine(), option + ": " + message);
  }
}
