package frieze.dryrun;

import frieze.clock.ClockSettings;
import frieze.dryrun.scene.TorchFacts;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a dry run is carried out.
 *
 * @param clock what is assumed of times that no machine tells
 * @param pictureColumns how many columns and rows a map of depths has at most; 0 keeps none
 * @param cellMm the cell of the stock field; empty for the usual one
 * @param torch what a torch is asked to cut
 */
record RunSettings(
    ClockSettings clock, int pictureColumns, OptionalDouble cellMm, Optional<TorchFacts> torch) {
  static final RunSettings USUAL =
      new RunSettings(ClockSettings.USUAL, 0, OptionalDouble.empty(), Optional.empty());

  RunSettings withClock(ClockSettings assumed) {
    return new RunSettings(assumed, pictureColumns, cellMm, torch);
  }

  RunSettings withPictures(int mostColumns) {
    return new RunSettings(clock, mostColumns, cellMm, torch);
  }

  RunSettings withCell(double sideMm) {
    return new RunSettings(clock, pictureColumns, OptionalDouble.of(sideMm), torch);
  }

  RunSettings withTorch(TorchFacts facts) {
    return new RunSettings(clock, pictureColumns, cellMm, Optional.of(facts));
  }
}
