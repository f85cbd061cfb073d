package frieze.cli;

/** The exit codes of every command. */
public enum ExitCode {
  FINE(0, "all is well; warnings may have been shown"),
  FINDING(1, "the dry run found an error: nothing of the job was written"),
  USAGE(2, "the command line is wrong"),
  BAD_INPUT(3, "a job, a drawing, a shop file or a program can't be used as it is"),
  DISK(4, "a file can't be read or written"),
  BUG(70, "Frieze itself has failed");

  private final int number;
  private final String meaning;

  ExitCode(int number, String meaning) {
    this.number = number;
    this.meaning = meaning;
  }

  /** What the process returns to its shell. */
  public int number() {
    return number;
  }

  /** What it stands for, in a few words. */
  public String meaning() {
    return meaning;
  }
}
