package frieze.keys;

import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** Finds out what bare numbers mean before anything else is read. */
public final class Units {
  private Units() {}

  /** Whether a file's top level says inches; a wrong value is reported when the key is read. */
  public static boolean inches(Node root) {
    if (!(root instanceof MappingNode mapping)) {
      return false;
    }
    return mapping.getValue().stream()
        .anyMatch(
            tuple ->
                tuple.getKeyNode() instanceof ScalarNode key
                    && key.getValue().equals("units")
                    && tuple.getValueNode() instanceof ScalarNode value
                    && (value.getValue().equals("in") || value.getValue().equals("inch")));
  }
}
