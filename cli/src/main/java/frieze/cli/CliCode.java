package frieze.cli;

import frieze.diagnostic.Code;

/** What can be wrong with the files that a command line names. */
enum CliCode implements Code {
  NO_SUCH_FILE("CLI-001", "no such file"),
  PROGRAM_CHANGED("CLI-002", "the program on the disk is another one"),
  FILE_TOO_LARGE("CLI-003", "the file is too large");

  private final String id;
  private final String title;

  CliCode(String id, String title) {
    this.id = id;
    this.title = title;
  }

  @Override
  public String id() {
    return id;
  }

  @Override
  public String title() {
    return title;
  }
}
