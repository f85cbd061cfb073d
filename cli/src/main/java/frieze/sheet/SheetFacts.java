package frieze.sheet;

import frieze.shop.Machine;
import java.util.List;

/**
 * Everything that the papers of a job tell.
 *
 * @param job its name
 * @param jobFile as the user named it
 * @param inches whether people read inches first
 * @param post the name of the post that wrote the programs
 */
public record SheetFacts(
    String job,
    String jobFile,
    boolean inches,
    Machine machine,
    String post,
    List<PanelFacts> panels) {
  public SheetFacts {
    panels = List.copyOf(panels);
  }
}
