package frieze.sheet;

/**
 * A colour scale whose lightness grows evenly and that colour-blind people see alike.
 *
 * <p>Source: Nunez, Anderton and Renslow, PLOS ONE 13(7), 2018; every fifth entry of the published
 * table of 256 (public domain, CC0).
 *
 * <p><i>Approximation:</i> at most 4 of 255 levels off the full table.
 */
final class Cividis {
  private static final int[] ENTRIES = {
    0x00224e, 0x002656, 0x002a5f, 0x002d68, 0x003070, 0x083370, 0x163770, 0x203a6f,
    0x273e6e, 0x2e416d, 0x34456c, 0x3a486c, 0x3f4c6c, 0x444f6c, 0x49536c, 0x4e566c,
    0x535a6d, 0x575d6d, 0x5c616e, 0x60646f, 0x656870, 0x696b71, 0x6d6f72, 0x727274,
    0x767676, 0x7a7a78, 0x7e7d78, 0x838179, 0x888578, 0x8d8878, 0x928c78, 0x969077,
    0x9b9476, 0xa09875, 0xa59c74, 0xaaa073, 0xafa471, 0xb5a86f, 0xbaac6d, 0xbfb06b,
    0xc4b468, 0xc9b965, 0xcfbd62, 0xd4c15f, 0xdac65b, 0xdfca57, 0xe5cf52, 0xead34c,
    0xf0d846, 0xf6dd3f, 0xfce236, 0xfee838,
  };

  private Cividis() {}

  /** The colour at a place from 0 (dark blue) to 1 (light yellow), as {@code 0xRRGGBB}. */
  static int rgb(double place) {
    double at = Math.min(1, Math.max(0, place)) * (ENTRIES.length - 1);
    int low = (int) Math.min(ENTRIES.length - 2, Math.floor(at));
    double share = at - low;
    int rgb = 0;
    for (int shift = 16; shift >= 0; shift -= 8) {
      int a = ENTRIES[low] >> shift & 0xff;
      int b = ENTRIES[low + 1] >> shift & 0xff;
      rgb |= (int) Math.round(a + (b - a) * share) << shift;
    }
    return rgb;
  }

  /** The colour as CSS writes it. */
  static String css(double place) {
    return String.format(java.util.Locale.ROOT, "#%06x", rgb(place));
  }
}
