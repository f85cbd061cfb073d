package frieze.job;

import frieze.keys.JobCode;
import frieze.keys.Reading;
import frieze.keys.Suggestion;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/**
 * Gives each panel that is {@code like} another the keys of that one which it does not have.
 *
 * <p>It works on the node tree, before the table of keys is asked, so that each value keeps its own
 * place in the file.
 */
final class LikePanels {
  /** Of these a panel has one: its own takes the place of another panel's. */
  private static final Set<String> SHAPES =
      Set.of(JobKeys.Panel.OPENING.name(), JobKeys.Panel.SIZE.name(), JobKeys.Panel.OUTLINE.name());

  private final Reading reading;

  private LikePanels(Reading reading) {
    this.reading = reading;
  }

  /** Completes the panels of a file's top level. */
  static Node complete(Node root, Reading reading) {
    return new LikePanels(reading).completeRoot(root);
  }

  private Node completeRoot(Node root) {
    if (!(root instanceof MappingNode mapping)) {
      return root;
    }
    List<NodeTuple> tuples = new ArrayList<>();
    for (NodeTuple tuple : mapping.getValue()) {
      boolean panels = name(tuple).equals(Optional.of(JobKeys.Root.PANELS.name()));
      tuples.add(
          panels && tuple.getValueNode() instanceof MappingNode all
              ? new NodeTuple(tuple.getKeyNode(), completePanels(all))
              : tuple);
    }
    return with(mapping, tuples);
  }

  private MappingNode completePanels(MappingNode panels) {
    Map<String, MappingNode> before = new LinkedHashMap<>();
    List<NodeTuple> tuples = new ArrayList<>();
    for (NodeTuple tuple : panels.getValue()) {
      Node value = tuple.getValueNode();
      if (value instanceof MappingNode panel) {
        value = completePanel(panel, before);
        MappingNode done = (MappingNode) value;
        name(tuple).ifPresent(name -> before.putIfAbsent(name, done));
      }
      tuples.add(new NodeTuple(tuple.getKeyNode(), value));
    }
    return with(panels, tuples);
  }

  private MappingNode completePanel(MappingNode panel, Map<String, MappingNode> before) {
    Optional<ScalarNode> like =
        panel.getValue().stream()
            .filter(t -> name(t).equals(Optional.of(JobKeys.Panel.LIKE.name())))
            .map(NodeTuple::getValueNode)
            .filter(ScalarNode.class::isInstance)
            .map(ScalarNode.class::cast)
            .findFirst();
    if (like.isEmpty()) {
      return panel;
    }
    MappingNode model = before.get(like.get().getValue());
    if (model == null) {
      reading.error(
          JobCode.NO_SUCH_PANEL,
          like.get(),
          "no panel named \"" + like.get().getValue() + "\" stands above this one",
          before.isEmpty()
              ? "put the panel that this one is like first"
              : Suggestion.hint(like.get().getValue(), before.keySet()));
      return panel;
    }
    return with(panel, joined(panel, model));
  }

  private static List<NodeTuple> joined(MappingNode panel, MappingNode model) {
    Set<String> own = new HashSet<>();
    panel.getValue().forEach(t -> name(t).ifPresent(own::add));
    if (own.stream().anyMatch(SHAPES::contains)) {
      own.addAll(SHAPES);
    }
    List<NodeTuple> tuples = new ArrayList<>(panel.getValue());
    for (NodeTuple tuple : model.getValue()) {
      if (name(tuple).filter(name -> !own.contains(name)).isPresent()) {
        tuples.add(tuple);
      }
    }
    return tuples;
  }

  private static Optional<String> name(NodeTuple tuple) {
    return tuple.getKeyNode() instanceof ScalarNode key
        ? Optional.of(key.getValue())
        : Optional.empty();
  }

  private static MappingNode with(MappingNode node, List<NodeTuple> tuples) {
    return new MappingNode(
        node.getTag(), true, tuples, node.getFlowStyle(), node.getStartMark(), node.getEndMark());
  }
}
