package frieze.template;

import frieze.curve.Path;
import frieze.opening.Sitting;
import frieze.screw.Screws;
import java.util.Optional;

/**
 * How a panel is held in its frame.
 *
 * @param sitting how it sits, where more than a rectangle and a gap is known
 * @param beyond the opening, larger by what the tape may be wrong: it must not go in
 * @param screws that hold it
 */
public record InFrame(Optional<Sitting> sitting, Optional<Path> beyond, Optional<Screws> screws) {}
