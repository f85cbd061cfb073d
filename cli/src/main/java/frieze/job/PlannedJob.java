package frieze.job;

import frieze.post.Post;
import java.util.List;

/** The panels of a job, planned, and the post that writes them. */
record PlannedJob(Job job, Post post, List<PlannedPanel> panels) {
  PlannedJob {
    panels = List.copyOf(panels);
  }
}
