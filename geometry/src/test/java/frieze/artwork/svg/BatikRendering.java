package frieze.artwork.svg;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Dimension2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import org.apache.batik.anim.dom.SAXSVGDocumentFactory;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.DocumentLoader;
import org.apache.batik.bridge.GVTBuilder;
import org.apache.batik.bridge.UserAgentAdapter;
import org.apache.batik.gvt.GraphicsNode;
import org.w3c.dom.svg.SVGDocument;

/** Drawings as Batik renders them: the share of each pixel that is covered. */
public final class BatikRendering {
  private static final double PX_PER_MM = 96 / 25.4;

  private BatikRendering() {}

  /** Builds the whole rendering tree of a drawing. */
  public static GraphicsNode tree(String svg, BridgeContext[] made) {
    try {
      SVGDocument document =
          new SAXSVGDocumentFactory(null).createSVGDocument("file:///t.svg", new StringReader(svg));
      UserAgentAdapter agent = new UserAgentAdapter();
      BridgeContext context = new BridgeContext(agent, new DocumentLoader(agent));
      context.setDynamicState(BridgeContext.STATIC);
      made[0] = context;
      return new GVTBuilder().build(context, document);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Renders a drawing that states its width and height; rows from the top, 0 to 1. */
  static double[][] coverage(String svg, double pixelsPerMm) {
    BridgeContext[] context = new BridgeContext[1];
    GraphicsNode root = tree(svg, context);
    Dimension2D size = context[0].getDocumentSize();
    double scale = pixelsPerMm / PX_PER_MM;
    int w = (int) Math.ceil(size.getWidth() * scale);
    int h = (int) Math.ceil(size.getHeight() * scale);
    BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.scale(scale, scale);
    root.paint(g);
    g.dispose();
    double[][] covered = new double[h][w];
    for (int j = 0; j < h; j++) {
      for (int i = 0; i < w; i++) {
        covered[j][i] = (image.getRGB(i, j) >>> 24) / 255.0;
      }
    }
    return covered;
  }
}
