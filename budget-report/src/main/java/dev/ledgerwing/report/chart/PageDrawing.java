package dev.ledgerwing.report.chart;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * Makes a drawing of the chart library fit for a page: attributes in place of style attributes, which a strict content security policy
 * blocks; classes in place of colours; no ids, so that nothing in the page can clash with it; a name for those who do not see it.
 */
final class PageDrawing {

    private static final Pattern DECLARATIONS = Pattern.compile("\\s*;\\s*");
    private static final Pattern COLON = Pattern.compile("\\s*:\\s*");
    private static final String STYLE = "style";

    private final Document drawing;

    private PageDrawing(String svg) {
        this.drawing = parsed(svg);
    }

    /** {@code svg} for a page, with a class and a name of its own. */
    static String of(String svg, String cssClass, String title) {
        PageDrawing page = new PageDrawing(svg);
        page.unclip();
        page.elements().forEach(PageDrawing::restyle);
        page.name(cssClass, title);
        return page.written();
    }

    /** Clip paths need ids; the chart draws nothing outside its axes. */
    private void unclip() {
        elements("defs").forEach(defs -> defs.getParentNode().removeChild(defs));
        elements().forEach(element -> element.removeAttribute("clip-path"));
    }

    private static void restyle(Element element) {
        String style = element.getAttribute(STYLE);
        element.removeAttribute(STYLE);
        DECLARATIONS.splitAsStream(style).filter(text -> !text.isBlank()).forEach(text -> {
            String[] declaration = COLON.split(text.trim(), 2);
            set(element, declaration[0], declaration[1]);
        });
    }

    private static void set(Element element, String property, String value) {
        switch (property) {
            case "fill", "stroke" ->
                Ink.written(value)
                        .ifPresentOrElse(
                                ink -> setInk(element, property, ink), () -> element.setAttribute(property, value));
            case "fill-opacity", "stroke-opacity", "font-family", "shape-rendering" -> {
                // inks have their own strength, text is written as the text around it
            }
            default -> element.setAttribute(property, value);
        }
    }

    private static void setInk(Element element, String property, Ink ink) {
        element.setAttribute("class", ink.cssClass());
        element.setAttribute(property, "currentColor");
        if (ink.opacity() < 1) {
            element.setAttribute(property + "-opacity", String.valueOf(ink.opacity()));
        }
    }

    private void name(String cssClass, String title) {
        Element svg = drawing.getDocumentElement();
        svg.removeAttribute("xmlns:jfreesvg");
        svg.removeAttribute("xmlns:xlink");
        svg.setAttribute("viewBox", "0 0 " + whole(svg, "width") + " " + whole(svg, "height"));
        svg.removeAttribute("width");
        svg.removeAttribute("height");
        svg.setAttribute("class", cssClass);
        svg.setAttribute("role", "img");
        Element name = drawing.createElementNS(svg.getNamespaceURI(), "title");
        name.setTextContent(title);
        svg.insertBefore(name, svg.getFirstChild());
    }

    private static int whole(Element svg, String attribute) {
        return (int) Double.parseDouble(svg.getAttribute(attribute));
    }

    private List<Element> elements() {
        return elements("*");
    }

    private List<Element> elements(String name) {
        NodeList nodes = drawing.getElementsByTagName(name);
        List<Node> found = new ArrayList<>();
        IntStream.range(0, nodes.getLength()).mapToObj(nodes::item).forEach(found::add);
        return found.stream().map(Element.class::cast).toList();
    }

    private static Document parsed(String svg) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setNamespaceAware(true);
            return factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
        } catch (ParserConfigurationException | SAXException | IOException ownDrawing) {
            throw new IllegalStateException(ownDrawing);
        }
    }

    private String written() {
        try {
            Transformer transformer = TransformerFactory.newInstance().newTransformer();
            transformer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
            StringWriter text = new StringWriter();
            transformer.transform(new DOMSource(drawing), new StreamResult(text));
            return text.toString();
        } catch (TransformerException ownDrawing) {
            throw new IllegalStateException(ownDrawing);
        }
    }
}
