package frieze.keys;

import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * What stays the same while one file is read.
 *
 * @param inches whether bare numbers are inches
 */
public record Reading(String source, boolean inches, Diagnostics diagnostics) {
  SourceSpan span(Node node) {
    return YamlText.span(source, node);
  }

  public void error(JobCode code, Node node, String message, String hint) {
    diagnostics.error(code, span(node), message, hint);
  }
}
