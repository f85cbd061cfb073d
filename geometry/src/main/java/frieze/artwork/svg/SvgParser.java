package frieze.artwork.svg;

import frieze.artwork.ArtworkCode;
import frieze.artwork.Limits;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.SourceSpan;
import java.io.IOException;
import java.io.StringReader;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;
import org.jspecify.annotations.Nullable;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.XMLReader;
import org.xml.sax.ext.DefaultHandler2;

/**
 * Turns the text of an SVG file into its elements.
 *
 * <p>Nothing outside the file is ever opened: no DTD, no entity, no include. A file that declares
 * an entity of its own is refused, since entities are how a small file grows without bound.
 */
final class SvgParser extends DefaultHandler2 {
  private static final String SVG = "http://www.w3.org/2000/svg";
  private static final String XLINK = "http://www.w3.org/1999/xlink";
  private static final String DECLARATIONS = "http://xml.org/sax/properties/declaration-handler";

  /** A reader for the next file of each thread: to make one takes as long as to read an icon. */
  private static final ThreadLocal<@Nullable XMLReader> READERS = new ThreadLocal<>();

  private final SourceText source;
  private @Nullable Locator locator;
  private @Nullable SvgElement root;
  private @Nullable SvgElement current;
  private int count;
  private int depth;

  private SvgParser(SourceText source) {
    this.source = source;
  }

  /**
   * Reads all elements.
   *
   * @throws BadInputException if the text is not XML, not SVG, declares entities or is too big
   */
  static SvgElement parse(SourceText source) {
    SvgParser handler = new SvgParser(source);
    try {
      XMLReader reader = READERS.get();
      READERS.remove();
      reader = reader == null ? newReader() : reader;
      reader.setContentHandler(handler);
      reader.setErrorHandler(handler);
      reader.setEntityResolver(handler);
      reader.setProperty(DECLARATIONS, handler);
      reader.parse(new InputSource(new StringReader(source.text())));
      keep(reader);
    } catch (SAXParseException e) {
      throw handler.notXml(e);
    } catch (SAXException | IOException | ParserConfigurationException e) {
      throw new BadInputException(
          Diagnostic.error(ArtworkCode.NOT_XML, source.file(), String.valueOf(e.getMessage()), ""));
    }
    SvgElement root = handler.root;
    if (root == null || !root.name().equals("svg")) {
      throw handler.notSvg(root);
    }
    return root;
  }

  /** Keeps a reader that has read to the end, without what it has read. */
  private static void keep(XMLReader reader) throws SAXException {
    DefaultHandler2 nobody = new DefaultHandler2();
    reader.setContentHandler(nobody);
    reader.setErrorHandler(nobody);
    reader.setEntityResolver(nobody);
    reader.setProperty(DECLARATIONS, nobody);
    READERS.set(reader);
  }

  private static XMLReader newReader() throws ParserConfigurationException, SAXException {
    SAXParserFactory factory = SAXParserFactory.newDefaultInstance();
    factory.setNamespaceAware(true);
    factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
    factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
    factory.setFeature("http://xml.org/sax/features/external-parameter-entities", false);
    factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
    return factory.newSAXParser().getXMLReader();
  }

  private BadInputException notXml(SAXParseException e) {
    SourceSpan where = source.span(source.offset(e.getLineNumber(), e.getColumnNumber()), 0);
    return new BadInputException(
        Diagnostic.error(
            ArtworkCode.NOT_XML,
            where,
            "this is not well-formed XML: " + e.getMessage(),
            "open the drawing in a drawing program and save it as plain SVG"));
  }

  private BadInputException notSvg(@Nullable SvgElement found) {
    SourceSpan where =
        found == null
            ? source.file()
            : source.span(found.startOffset(), found.endOffset() - found.startOffset());
    return new BadInputException(
        Diagnostic.error(
            ArtworkCode.NOT_SVG,
            where,
            "the outermost element is not an svg element of SVG",
            "it must start with <svg xmlns=\"" + SVG + "\">"));
  }

  private BadInputException refuse(ArtworkCode code, String message, String hint) {
    return new BadInputException(Diagnostic.error(code, here(), message, hint));
  }

  private SourceSpan here() {
    return source.span(offsetHere(), 0);
  }

  private int offsetHere() {
    Locator at = locator;
    return at == null ? 0 : source.offset(at.getLineNumber(), at.getColumnNumber());
  }

  @Override
  public void setDocumentLocator(Locator locator) {
    this.locator = locator;
  }

  @Override
  public void startElement(String uri, String localName, String qName, Attributes attributes) {
    count++;
    depth++;
    if (count > Limits.MAX_ELEMENTS) {
      throw refuse(
          ArtworkCode.TOO_BIG,
          "the drawing has more than " + Limits.MAX_ELEMENTS + " elements",
          "simplify it or split it");
    }
    if (depth > Limits.MAX_DEPTH) {
      throw refuse(
          ArtworkCode.TOO_BIG,
          "the elements are nested more than " + Limits.MAX_DEPTH + " deep",
          "ungroup the drawing");
    }
    boolean ours = uri.equals(SVG) || uri.isEmpty();
    int end = offsetHere();
    int start = Math.max(0, source.text().lastIndexOf('<', Math.max(0, end - 1)));
    SvgElement element = new SvgElement(ours ? localName : "", current, start, end);
    for (int i = 0; i < attributes.getLength(); i++) {
      if (attributes.getURI(i).isEmpty()) {
        element.attributes().put(attributes.getLocalName(i), attributes.getValue(i));
      } else if (attributes.getURI(i).equals(XLINK)) {
        element.attributes().put("xlink:" + attributes.getLocalName(i), attributes.getValue(i));
      } else if (attributes.getQName(i).equals("xml:space")) {
        element.attributes().put("xml:space", attributes.getValue(i));
      } else if (attributes.getLocalName(i).equals("label")) {
        element.attributes().putIfAbsent("label", attributes.getValue(i));
      }
    }
    if (root == null) {
      root = element;
    }
    current = element;
  }

  @Override
  public void endElement(String uri, String localName, String qName) {
    depth--;
    SvgElement ended = current;
    current = ended == null ? null : ended.parent();
  }

  @Override
  public void characters(char[] ch, int start, int length) {
    SvgElement in = current;
    if (in == null) {
      return;
    }
    switch (in.name()) {
      case "style", "title" -> in.text().append(ch, start, length);
      case "text", "tspan", "a" ->
          in.words().add(new SvgElement.Words(in.children().size(), new String(ch, start, length)));
      default -> {}
    }
  }

  @Override
  public void internalEntityDecl(String name, String value) {
    throw entityDeclared(name);
  }

  @Override
  public void externalEntityDecl(String name, String publicId, @Nullable String systemId) {
    throw entityDeclared(name);
  }

  private BadInputException entityDeclared(String name) {
    return refuse(
        ArtworkCode.ENTITY_DECLARED,
        "the file declares the entity \"" + name + "\"; entities are never followed",
        "save the drawing as plain SVG, without a DOCTYPE");
  }

  /** Answers every request for something outside with nothing. */
  @Override
  public InputSource resolveEntity(
      @Nullable String name,
      @Nullable String publicId,
      @Nullable String baseUri,
      @Nullable String systemId) {
    return new InputSource(new StringReader(""));
  }

  @Override
  public void error(SAXParseException e) throws SAXException {
    throw e;
  }

  @Override
  public void fatalError(SAXParseException e) throws SAXException {
    throw e;
  }
}
