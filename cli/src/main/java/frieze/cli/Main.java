package frieze.cli;

/** Starts Frieze as a process. */
public final class Main {
  private Main() {}

  /** A library that may write a log says on standard error that nobody reads it, unless told so. */
  private static void keepLogsQuiet() {
    System.setProperty("slf4j.internal.verbosity", "ERROR");
  }

  /** Runs one command and ends the process with its exit code. */
  public static void main(String[] args) {
    keepLogsQuiet();
    Console console = Console.ofProcess();
    int code = Frieze.run(console, args);
    console.out().flush();
    console.err().flush();
    System.exit(code);
  }
}
