package frieze.build;

import frieze.job.Job;
import frieze.post.Post;
import java.util.List;

/** The panels of a job, planned, and the post that writes them. */
public record PlannedJob(Job job, Post post, List<PlannedPanel> panels) {
  public PlannedJob {
    panels = List.copyOf(panels);
  }
}
