package frieze.job;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/**
 * Adds a panel for each row of a table of openings.
 *
 * <p>It works on the node tree, before the table of keys is asked: a row becomes what a person
 * would have written, a panel {@code like} another with an opening of its own. All its values
 * stand, for messages, where the job names the table.
 */
final class TablePanels {
  private static final int MOST_ROWS = 500;
  private static final String NAME = "panel";

  /** The columns that are keys of a panel; all others are keys of its opening. */
  private static final Set<String> OF_PANEL =
      Set.of(JobKeys.Panel.LIKE.name(), JobKeys.Panel.MIRROR.name());

  private final Reading reading;
  private final SourceFiles files;
  private final UnaryOperator<String> beside;

  private TablePanels(Reading reading, SourceFiles files, UnaryOperator<String> beside) {
    this.reading = reading;
    this.files = files;
    this.beside = beside;
  }

  /**
   * Completes the panels of a file's top level.
   *
   * @param beside finds a file from the job's folder
   */
  static Node complete(
      Node root, Reading reading, SourceFiles files, UnaryOperator<String> beside) {
    return new TablePanels(reading, files, beside).completeRoot(root);
  }

  private Node completeRoot(Node root) {
    Optional<MappingNode> table =
        value(root, JobKeys.Root.TABLE.name())
            .filter(MappingNode.class::isInstance)
            .map(MappingNode.class::cast);
    Optional<ScalarNode> file = table.flatMap(t -> scalar(t, FitKeys.Table.FILE.name()));
    Optional<ScalarNode> like = table.flatMap(t -> scalar(t, FitKeys.Table.LIKE.name()));
    if (file.isEmpty() || like.isEmpty()) {
      return root;
    }
    List<NodeTuple> added = panels(file.get(), like.get());
    List<NodeTuple> tuples = new ArrayList<>();
    for (NodeTuple tuple : ((MappingNode) root).getValue()) {
      boolean panels = isNamed(tuple, JobKeys.Root.PANELS.name());
      tuples.add(
          panels && tuple.getValueNode() instanceof MappingNode all
              ? new NodeTuple(tuple.getKeyNode(), with(all, added))
              : tuple);
    }
    return mapping(tuples, root);
  }

  private List<NodeTuple> panels(ScalarNode file, ScalarNode like) {
    List<List<String>> rows = rows(file);
    if (rows.isEmpty()) {
      return List.of();
    }
    List<String> columns = rows.get(0);
    if (!columns.contains(NAME) || rows.size() > MOST_ROWS + 1) {
      reading.error(
          JobCode.BAD_TABLE,
          file,
          columns.contains(NAME)
              ? "the table has " + (rows.size() - 1) + " rows; at most " + MOST_ROWS + " are read"
              : "the table has no column \"" + NAME + "\"",
          "the first row names the columns: panel,width,height,...");
      return List.of();
    }
    List<NodeTuple> panels = new ArrayList<>();
    for (List<String> row : rows.subList(1, rows.size())) {
      if (row.size() > columns.size()) {
        reading.error(
            JobCode.BAD_TABLE,
            file,
            "the row of \"" + row.get(0) + "\" has more cells than there are columns",
            "put quotes around a cell that has a comma in it");
        return List.of();
      }
      panels.add(panel(columns, row, like, file));
    }
    return panels;
  }

  private NodeTuple panel(List<String> columns, List<String> row, ScalarNode like, Node at) {
    List<NodeTuple> ofPanel = new ArrayList<>();
    List<NodeTuple> ofOpening = new ArrayList<>();
    String name = "";
    for (int i = 0; i < row.size(); i++) {
      String column = columns.get(i);
      if (column.equals(NAME)) {
        name = row.get(i);
      } else if (!row.get(i).isEmpty()) {
        (OF_PANEL.contains(column) ? ofPanel : ofOpening)
            .add(new NodeTuple(text(column, at), cell(row.get(i), at)));
      }
    }
    if (ofPanel.stream().noneMatch(t -> isNamed(t, JobKeys.Panel.LIKE.name()))) {
      ofPanel.add(new NodeTuple(text(JobKeys.Panel.LIKE.name(), at), like));
    }
    ofPanel.add(new NodeTuple(text(JobKeys.Panel.OPENING.name(), at), mapping(ofOpening, at)));
    return new NodeTuple(text(name, at), mapping(ofPanel, at));
  }

  private List<List<String>> rows(ScalarNode file) {
    String name = beside.apply(file.getValue());
    try {
      return CsvText.rows(new String(files.read(name), StandardCharsets.UTF_8));
    } catch (IOException e) {
      reading.error(JobCode.FILE_NOT_READ, file, "can't read " + name, "");
    } catch (IllegalArgumentException e) {
      reading.error(JobCode.BAD_TABLE, file, String.valueOf(e.getMessage()), "");
    }
    return List.of();
  }

  /** A value, or a list where semicolons part it. */
  private static Node cell(String cell, Node at) {
    if (!cell.contains(";")) {
      return text(cell, at);
    }
    List<Node> items = new ArrayList<>();
    for (String item : cell.split(";", -1)) {
      items.add(text(item.strip(), at));
    }
    return new SequenceNode(
        Tag.SEQ, true, items, FlowStyle.FLOW, at.getStartMark(), at.getEndMark());
  }

  private static ScalarNode text(String value, Node at) {
    return new ScalarNode(
        Tag.STR, true, value, ScalarStyle.PLAIN, at.getStartMark(), at.getEndMark());
  }

  private static MappingNode mapping(List<NodeTuple> tuples, Node at) {
    return new MappingNode(
        Tag.MAP, true, tuples, FlowStyle.BLOCK, at.getStartMark(), at.getEndMark());
  }

  private static MappingNode with(MappingNode all, List<NodeTuple> added) {
    List<NodeTuple> tuples = new ArrayList<>(all.getValue());
    tuples.addAll(added);
    return mapping(tuples, all);
  }

  private static boolean isNamed(NodeTuple tuple, String name) {
    return tuple.getKeyNode() instanceof ScalarNode key && key.getValue().equals(name);
  }

  private static Optional<Node> value(Node node, String name) {
    return node instanceof MappingNode mapping
        ? mapping.getValue().stream()
            .filter(t -> isNamed(t, name))
            .map(NodeTuple::getValueNode)
            .findFirst()
        : Optional.empty();
  }

  private static Optional<ScalarNode> scalar(Node node, String name) {
    return value(node, name).filter(ScalarNode.class::isInstance).map(ScalarNode.class::cast);
  }
}
