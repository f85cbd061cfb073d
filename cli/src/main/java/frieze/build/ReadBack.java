package frieze.build;

import frieze.post.Post;
import frieze.post.ProgramText;
import frieze.rs274.ReadingRules;
import frieze.shop.Tool;
import java.util.List;

/** Hands programs to the dry run as their controller would read them. */
public final class ReadBack {
  private ReadBack() {}

  public static List<frieze.dryrun.ProgramText> texts(List<ProgramText> programs, Post post) {
    return programs.stream()
        .map(p -> frieze.dryrun.ProgramText.of(p.fileName(), p.bytes(), rules(p, post)))
        .toList();
  }

  /** The rules of the controller; the operator has put the program's first tool in. */
  private static ReadingRules rules(ProgramText program, Post post) {
    ReadingRules rules = post.reading();
    Tool first = program.tools().get(0);
    return rules.but().start(rules.start().withTool(first.number())).build();
  }
}
