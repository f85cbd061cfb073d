package frieze.post;

import frieze.diagnostic.Code;

/** What can be wrong in a dialect file. Explained in {@code docs/reference/messages/post.md}. */
public enum PostCode implements Code {
  NOT_YAML("POST-001", "the dialect file cannot be read"),
  UNKNOWN_KEY("POST-002", "a key that no dialect has"),
  DUPLICATE_KEY("POST-003", "a key twice"),
  MISSING_KEY("POST-004", "a key is missing"),
  WRONG_VALUE("POST-005", "a value that the key cannot have"),
  UNKNOWN_PLACEHOLDER("POST-006", "a placeholder that is not known there"),
  CONTRADICTION("POST-007", "two statements that contradict each other"),
  UNREADABLE_LINE("POST-008", "a line that the declared controller could not read"),
  TOO_LARGE("POST-009", "a program is larger than the controller takes");

  private final String id;
  private final String title;

  PostCode(String id, String title) {
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
