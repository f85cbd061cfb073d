package frieze.job;

import frieze.build.Build;
import frieze.build.PlannedJob;
import frieze.build.PlannedPanel;
import frieze.build.ProgramHeader;
import frieze.lower.FileNames;
import frieze.post.Post;
import frieze.post.Posting;
import frieze.post.Posts;
import frieze.post.ProgramText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The examples of the pages, planned and written without a dry run. */
final class Examples {
  private static final String FOLDER = "../docs/examples/hall-bench/";

  private static final SourceFiles FILES =
      new SourceFiles() {
        @Override
        public byte[] read(String name) throws IOException {
          return Files.readAllBytes(Path.of(name));
        }

        @Override
        public boolean exists(String name) {
          return Files.isRegularFile(Path.of(name));
        }
      };

  private Examples() {}

  static PlannedJob planned(String file) {
    List<String> posts = Posts.all().stream().map(Post::id).toList();
    return Build.planned(JobReader.read(FOLDER + file, FILES, posts), FILES);
  }

  static List<ProgramText> texts(PlannedJob job, PlannedPanel panel, Post post) {
    return Posting.write(
        panel.sequence(),
        panel.setup(),
        post,
        ProgramHeader.lines(job.job(), panel.setup()),
        new FileNames(post.capabilities().files()));
  }
}
