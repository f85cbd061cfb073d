package frieze.cli;

import frieze.lower.Capabilities;
import frieze.post.Post;
import frieze.post.Posts;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists the posts. */
@Command(
    name = "posts",
    description = {
      "Lists the ways to write a program, and which controllers each suits; or prints one of them as"
          + " a dialect file to start from.",
      "If you do not know your controller: take short-arcs. It asks for nothing but lines, arcs and a dwell."
    },
    mixinStandardHelpOptions = true,
    usageHelpAutoWidth = true)
final class PostsCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(arity = "0..1", paramLabel = "NAME", description = "prints this built-in post")
  private @Nullable String name;

  @Spec private CommandSpec spec = CommandSpec.create();

  PostsCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    if (name != null) {
      return print(name);
    }
    Table table = new Table("post", "arcs", "tools", "drilling", "suits");
    Posts.all().forEach(post -> table.row(row(post)));
    console.out().print(table);
    return ExitCode.FINE.number();
  }

  private Integer print(String wanted) {
    String file =
        Posts.find(wanted)
            .flatMap(post -> Posts.dialectFile(post.id()))
            .orElseThrow(
                () ->
                    new ParameterException(
                        spec.commandLine(),
                        "no built-in post named \"" + wanted + "\"; see `frieze posts`"));
    console.out().print(file);
    return ExitCode.FINE.number();
  }

  private static List<String> row(Post post) {
    Capabilities can = post.capabilities();
    String tools =
        switch (can.toolChanging()) {
          case SEPARATE_PROGRAMS -> "one program each";
          case STOP -> "a stop for each";
          case CHANGER -> "changed by program";
        };
    return List.of(
        post.id(),
        can.arcs().format() == Capabilities.ArcFormat.NONE ? "as lines" : "yes",
        tools,
        can.cycles().isEmpty() ? "as plain moves" : "cycles",
        post.summary());
  }
}
