package frieze.image;

/**
 * What is looked at in a JPEG file beside its header.
 *
 * <p>Source: ITU-T T.81, annex B.
 */
final class JpegData {
  private static final int MARKER = 0xff;
  private static final int START_OF_IMAGE = 0xd8;
  private static final int START_OF_SCAN = 0xda;
  private static final int END_OF_IMAGE = 0xd9;
  private static final int FIRST_RESTART = 0xd0;

  private JpegData() {}

  static boolean isJpeg(byte[] file) {
    return file.length > 2 && at(file, 0) == MARKER && at(file, 1) == START_OF_IMAGE;
  }

  /** Whether a file goes on to its end. One that breaks off is grey from there on. */
  static boolean isWhole(byte[] file) {
    return last(file, END_OF_IMAGE) >= last(file, START_OF_SCAN);
  }

  private static int last(byte[] file, int code) {
    int i = file.length - 2;
    while (i >= 0 && !(at(file, i) == MARKER && at(file, i + 1) == code)) {
      i--;
    }
    return i;
  }

  /** In how many scans the pixels come, each of which goes over the whole picture. */
  static int scans(byte[] file) {
    int scans = 0;
    int i = 2;
    while (i + 3 < file.length) {
      int code = at(file, i + 1);
      if (at(file, i) != MARKER || code == 0 || code == MARKER || isBare(code)) {
        i++; // Data between markers, or one without a length.
      } else {
        scans += code == START_OF_SCAN ? 1 : 0;
        i += 2 + (at(file, i + 2) << Byte.SIZE) + at(file, i + 3);
      }
    }
    return scans;
  }

  private static boolean isBare(int code) {
    return code >= FIRST_RESTART && code <= END_OF_IMAGE;
  }

  private static int at(byte[] file, int i) {
    return file[i] & 0xff;
  }
}
