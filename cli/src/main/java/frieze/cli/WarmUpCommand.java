package frieze.cli;

import frieze.build.Build;
import frieze.build.BuiltPanel;
import frieze.job.Job;
import frieze.job.JobReader;
import frieze.job.SourceFiles;
import frieze.post.Post;
import frieze.post.Posts;
import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/**
 * Makes the starter job in memory, so that the launcher can record which classes a make needs. It
 * writes nothing.
 */
@Command(name = "warm-up", hidden = true, description = "Loads what a make needs.")
final class WarmUpCommand implements Callable<Integer> {
  private static final SourceFiles STARTER =
      new SourceFiles() {
        @Override
        public byte[] read(String name) throws IOException {
          return NewCommand.starter(NewCommand.Kind.BENCH, name);
        }

        @Override
        public boolean exists(String name) {
          return NewCommand.Kind.BENCH.files().contains(name);
        }
      };

  @Override
  public Integer call() {
    List<String> posts = Posts.all().stream().map(Post::id).toList();
    Job job = JobReader.read(NewCommand.Kind.BENCH.files().get(0), STARTER, posts);
    List<BuiltPanel> panels = Build.run(job, STARTER);
    panels.forEach(Papers::files);
    return ExitCode.FINE.number();
  }
}
