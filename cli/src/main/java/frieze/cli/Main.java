package frieze.cli;

/** Starts Frieze as a process. */
public final class Main {
  private Main() {}

  /** Runs one command and ends the process with its exit code. */
  public static void main(String[] args) {
    Console console = Console.ofProcess();
    int code = Frieze.run(console, args);
    console.out().flush();
    console.err().flush();
    System.exit(code);
  }
}
