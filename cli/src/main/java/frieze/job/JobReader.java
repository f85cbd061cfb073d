package frieze.job;

import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import frieze.keys.JobCode;
import frieze.keys.Reading;
import frieze.keys.SectionType;
import frieze.keys.Suggestion;
import frieze.keys.Units;
import frieze.keys.Values;
import frieze.keys.YamlText;
import frieze.shop.Machine;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * Reads a job file and finds its machine, tools and materials in the shop.
 *
 * <p>The file is read by the table {@link JobKeys} first; only when every value in it can be read
 * are the names looked up, so that a user sees all errors of one kind at once.
 */
public final class JobReader {
  private static final String SHOP_FILE = "shop.yaml";

  private final SourceFiles files;
  private final List<String> posts;
  private final Diagnostics found = new Diagnostics();

  private JobReader(SourceFiles files, List<String> posts) {
    this.files = files;
    this.posts = List.copyOf(posts);
  }

  /**
   * Reads a job.
   *
   * @param source the file's name
   * @param posts the names of the posts that there are
   * @throws BadInputException with everything that is wrong in it
   */
  public static Job read(String source, SourceFiles files, List<String> posts) {
    return new JobReader(files, posts).readFile(source);
  }

  private Job readFile(String source) {
    Node root =
        YamlText.parse(source, content(source, SourceSpan.file(source)))
            .orElseThrow(
                () ->
                    BadInputException.of(
                        JobCode.NOTHING_TO_DO,
                        SourceSpan.file(source),
                        "the job file is empty",
                        "`frieze new` writes one to start from"));
    Reading reading = new Reading(source, Units.inches(root), found);
    Node tabled = TablePanels.complete(root, reading, files, name -> beside(source, name));
    Node completed = LikePanels.complete(tabled, reading);
    found.throwIfErrors();
    Optional<Values> values = new SectionType(JobKeys.Root.SECTION).read(completed, reading);
    found.throwIfErrors();
    return job(source, values.orElseThrow());
  }

  private Job job(String source, Values root) {
    Shop shop = shop(source, root);
    Machine machine = machine(root, shop);
    String post = post(source, root, machine);
    DrawingReader reader = new DrawingReader(source, files, found);
    List<Job.Drawing> drawings = reader.read(root.find(JobKeys.Root.ARTWORK).orElse(Map.of()));
    PanelReader panels =
        new PanelReader(
            shop,
            machine,
            new PlacingReader(
                drawings.stream().map(Job.Drawing::name).toList(),
                root.get(JobKeys.Root.SEED),
                found),
            new OutlineReader(reader, files, found),
            found);
    List<Job.PanelJob> all = new ArrayList<>();
    root.get(JobKeys.Root.PANELS).forEach((name, panel) -> all.addAll(panels.read(name, panel)));
    found.throwIfErrors();
    return new Job(
        source,
        root.get(JobKeys.Root.JOB),
        root.get(JobKeys.Root.UNITS),
        machine,
        post,
        drawings,
        all);
  }

  private Shop shop(String source, Values root) {
    Shop builtIn = ShopReader.builtIn();
    String file = shopFile(source, root);
    if (!root.has(JobKeys.Root.SHOP) && !files.exists(file)) {
      return builtIn;
    }
    return ShopReader.read(file, content(file, root.where(JobKeys.Root.SHOP))).over(builtIn);
  }

  private Machine machine(Values root, Shop shop) {
    String name = root.get(JobKeys.Root.MACHINE);
    return shop.machine(name)
        .orElseThrow(
            () ->
                BadInputException.of(
                    JobCode.NO_SUCH_MACHINE,
                    root.where(JobKeys.Root.MACHINE),
                    "no machine named \"" + name + "\" in the shop",
                    Suggestion.hint(name, shop.machineNames())));
  }

  private static String shopFile(String source, Values root) {
    return beside(source, root.find(JobKeys.Root.SHOP).orElse(SHOP_FILE));
  }

  /** A dialect file lies beside the file that names it: the job, or the shop. */
  private String post(String source, Values root, Machine machine) {
    String post = root.find(JobKeys.Root.POST).orElse(machine.post());
    String file = beside(root.has(JobKeys.Root.POST) ? source : shopFile(source, root), post);
    if (ChosenPost.isFile(post) && files.exists(file)) {
      return file;
    }
    if (!posts.contains(post)) {
      boolean isFile = ChosenPost.isFile(post);
      found.error(
          JobCode.NO_SUCH_POST,
          root.has(JobKeys.Root.POST)
              ? root.where(JobKeys.Root.POST)
              : root.where(JobKeys.Root.MACHINE),
          isFile ? "no dialect file " + file : "no post named \"" + post + "\"",
          isFile
              ? "a dialect file is looked for beside the file that names it"
              : Suggestion.hint(post, posts));
    }
    return post;
  }

  private byte[] content(String file, SourceSpan where) {
    try {
      return files.read(file);
    } catch (FileSystemException e) {
      String hint =
          Optional.ofNullable(e.getReason())
              .map(reason -> "it " + reason)
              .orElse(
                  files.exists(file)
                      ? "check the permissions of the file"
                      : "there is no such file");
      throw BadInputException.of(JobCode.FILE_NOT_READ, where, "can't read " + file, hint);
    } catch (IOException e) {
      throw BadInputException.of(
          JobCode.FILE_NOT_READ,
          where,
          "can't read " + file,
          files.exists(file) ? "check the permissions of the file" : "there is no such file");
    }
  }

  static String beside(String source, String file) {
    // No file has such a name, and no path may hold it.
    String possible = file.replace('\0', '?');
    return Path.of(source).resolveSibling(possible).toString();
  }
}
