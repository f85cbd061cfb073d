package frieze.trace;

import frieze.diagnostic.Amounts;
import java.util.Locale;

/** Says where the real size comes from. */
final class SizeWords implements RealSize.Visitor<String> {
  static final SizeWords INSTANCE = new SizeWords();

  private static final double MM_PER_INCH = 25.4;

  private SizeWords() {}

  @Override
  public String height(RealSize.Height height) {
    return "the outlines together are " + Amounts.length(height.mm()) + " high";
  }

  @Override
  public String width(RealSize.Width width) {
    return "the outlines together are " + Amounts.length(width.mm()) + " wide";
  }

  @Override
  public String pixel(RealSize.Pixel pixel) {
    return String.format(Locale.ROOT, "%.4g dots to the inch", MM_PER_INCH / pixel.mm());
  }

  @Override
  public String sheet(RealSize.Sheet sheet) {
    return "four corners of a sheet of "
        + Amounts.length(sheet.widthMm())
        + " by "
        + Amounts.length(sheet.heightMm());
  }
}
