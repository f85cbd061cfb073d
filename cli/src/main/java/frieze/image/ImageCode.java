package frieze.image;

import frieze.diagnostic.Code;

/** What can be wrong with a picture's file. */
public enum ImageCode implements Code {
  NOT_A_PICTURE("IMG-001", "the file is not a picture that Frieze reads"),
  TOO_MANY_PIXELS("IMG-002", "the picture has too many pixels"),
  BROKEN_PICTURE("IMG-003", "the picture is damaged");

  private final String id;
  private final String title;

  ImageCode(String id, String title) {
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
