package frieze.job;

import frieze.keys.CsvText;
import frieze.keys.CsvText.Cell;
import frieze.keys.JobCode;
import frieze.keys.Key;
import frieze.keys.Reading;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.exceptions.Mark;
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
 * would have written, a panel {@code like} another with an opening of its own. Its values stand,
 * for messages, in their cells of the table.
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
    String name = beside.apply(file.getValue());
    List<List<Cell>> rows = rows(name, file);
    if (rows.isEmpty()) {
      return List.of();
    }
    List<Cell> columns = rows.get(0);
    if (columns.stream().noneMatch(c -> c.text().equals(NAME)) || rows.size() > MOST_ROWS + 1) {
      reading.error(
          JobCode.BAD_TABLE,
          text(name, columns.get(0)),
          rows.size() > MOST_ROWS + 1
              ? "the table has " + (rows.size() - 1) + " rows; at most " + MOST_ROWS + " are read"
              : "the table has no column \"" + NAME + "\"",
          "the first row names the columns: panel,width,height,...");
      return List.of();
    }
    List<NodeTuple> panels = new ArrayList<>();
    for (List<Cell> row : rows.subList(1, rows.size())) {
      if (row.size() > columns.size()) {
        reading.error(
            JobCode.BAD_TABLE,
            text(name, row.get(columns.size())),
            "the row of \"" + row.get(0).text() + "\" has more cells than there are columns",
            "put quotes around a cell that has a comma in it");
        return List.of();
      }
      panels.add(panel(name, columns, row, like));
    }
    return panels;
  }

  private NodeTuple panel(String table, List<Cell> columns, List<Cell> row, ScalarNode like) {
    List<NodeTuple> ofPanel = new ArrayList<>();
    List<NodeTuple> ofOpening = new ArrayList<>();
    Cell name = new Cell("", row.get(0).line(), 0, 0);
    for (int i = 0; i < row.size(); i++) {
      String column = columns.get(i).text();
      if (column.equals(NAME)) {
        name = row.get(i);
      } else if (!row.get(i).isEmpty()) {
        (OF_PANEL.contains(column) ? ofPanel : ofOpening)
            .add(new NodeTuple(text(table, columns.get(i)), value(table, row.get(i))));
      }
    }
    ScalarNode head = text(table, name);
    if (ofPanel.stream().noneMatch(t -> isNamed(t, JobKeys.Panel.LIKE.name()))) {
      ofPanel.add(new NodeTuple(key(JobKeys.Panel.LIKE, head), like));
    }
    ofPanel.add(new NodeTuple(key(JobKeys.Panel.OPENING, head), mapping(ofOpening, head)));
    return new NodeTuple(head, mapping(ofPanel, head));
  }

  private List<List<Cell>> rows(String name, ScalarNode file) {
    try {
      return CsvText.rows(new String(files.read(name), StandardCharsets.UTF_8));
    } catch (IOException e) {
      reading.error(JobCode.FILE_NOT_READ, file, "can't read " + name, "");
    } catch (CsvText.OpenQuoteException e) {
      Cell quote = new Cell("", e.line(), e.column(), 1);
      reading.error(JobCode.BAD_TABLE, text(name, quote), String.valueOf(e.getMessage()), "");
    }
    return List.of();
  }

  /** A value, or a list where semicolons part it. */
  private static Node value(String table, Cell cell) {
    if (!cell.text().contains(";")) {
      return text(table, cell);
    }
    List<Node> items = new ArrayList<>();
    int from = 0;
    for (String item : cell.text().split(";", -1)) {
      int blanks = item.length() - item.stripLeading().length();
      String value = item.strip();
      items.add(
          text(table, new Cell(value, cell.line(), cell.column() + from + blanks, value.length())));
      from += item.length() + 1;
    }
    ScalarNode at = text(table, cell);
    return new SequenceNode(
        Tag.SEQ, true, items, FlowStyle.FLOW, at.getStartMark(), at.getEndMark());
  }

  private static ScalarNode key(Key<?> key, ScalarNode at) {
    return new ScalarNode(
        Tag.STR, true, key.name(), ScalarStyle.PLAIN, at.getStartMark(), at.getEndMark());
  }

  /** The text of a cell, which knows its place in the table. */
  private static ScalarNode text(String table, Cell cell) {
    return new ScalarNode(
        Tag.STR,
        true,
        cell.text(),
        ScalarStyle.PLAIN,
        Optional.of(mark(table, cell.line(), cell.column())),
        Optional.of(mark(table, cell.line(), cell.column() + cell.length())));
  }

  private static Mark mark(String table, int line, int column) {
    return new Mark(table, 0, line, column, new int[0], 0);
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
