package frieze.job;

import java.io.IOException;

/** Gives the content of the files that a job names. */
public interface SourceFiles {
  /**
   * Reads a file.
   *
   * @param name as the user wrote it, or as found from the name of the file that mentions it
   */
  byte[] read(String name) throws IOException;

  /** Whether there is a file of that name. */
  boolean exists(String name);
}
