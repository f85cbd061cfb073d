package frieze.cli;

import frieze.job.KeyPage;
import frieze.job.KeySchema;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes the table of keys. */
@Command(
    name = "keys",
    description = {
      "Prints every key of the job file and the shop file: as a page in Markdown, or as a JSON"
          + " schema for editors that check YAML while you type."
    },
    mixinStandardHelpOptions = true,
    usageHelpAutoWidth = true)
final class KeysCommand implements Callable<Integer> {
  private final Console console;

  @Option(
      names = "--as",
      paramLabel = "FORM",
      description = "page, job-schema or shop-schema (page)")
  private String form = "page";

  KeysCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    switch (form) {
      case "page" -> console.out().print(KeyPage.write());
      case "job-schema" -> console.out().print(KeySchema.ofJob());
      case "shop-schema" -> console.out().print(KeySchema.ofShop());
      default -> {
        console.err().println("error: --as must be page, job-schema or shop-schema");
        return ExitCode.USAGE.number();
      }
    }
    return ExitCode.FINE.number();
  }
}
