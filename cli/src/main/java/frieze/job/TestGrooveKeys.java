package frieze.job;

import frieze.keys.Key;
import frieze.keys.Range;
import frieze.keys.Section;
import frieze.keys.Types;
import java.util.List;

/** One groove of a test cut with a V-bit. */
final class TestGrooveKeys {
  static final Key<Double> DEPTH =
      Key.required("depth", Types.length(Range.POSITIVE), "how deep it is, as programmed");
  static final Key<Double> WIDTH =
      Key.required("width", Types.length(Range.POSITIVE), "how wide it is at the surface");
  static final Section SECTION =
      new Section("test groove", "A straight groove cut and measured.", List.of(DEPTH, WIDTH));

  private TestGrooveKeys() {}
}
