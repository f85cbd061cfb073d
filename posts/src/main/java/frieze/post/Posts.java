package frieze.post;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;

/** Finds the posts that are there: the built-in ones and those of plug-ins on the class path. */
public final class Posts {
  private Posts() {}

  /** All posts, by name. */
  public static List<Post> all() {
    return ServiceLoader.load(Post.class, Posts.class.getClassLoader()).stream()
        .map(ServiceLoader.Provider::get)
        .sorted(Comparator.comparing(Post::id))
        .toList();
  }

  /** The post of a name. */
  public static Optional<Post> find(String id) {
    return all().stream().filter(p -> p.id().equals(id)).findFirst();
  }

  /** The dialect file of a built-in post, to start one's own from. */
  public static Optional<String> dialectFile(String id) {
    return BuiltInPosts.file(id);
  }
}
