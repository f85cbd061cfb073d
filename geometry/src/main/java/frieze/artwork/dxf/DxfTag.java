package frieze.artwork.dxf;

/**
 * A group: a code and a value, each on a line of its own.
 *
 * @param line of the code, counted from 1
 */
record DxfTag(int code, String value, int line) {}
