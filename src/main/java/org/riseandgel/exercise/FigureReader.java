package org.riseandgel.exercise;

import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.commonmark.renderer.html.HtmlWriter;

/**
 * Reads a figure and rebuilds it from a short list of allowed elements and attributes. Nothing of the file's own markup
 * is copied: what is not on the list is reported and left out, so a figure can neither run, load nor restyle anything.
 */
public final class FigureReader {
    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final Set<String> ELEMENTS =
            Set.of("svg", "g", "path", "line", "polyline", "polygon", "rect", "circle", "ellipse", "text", "tspan");
    private static final Set<String> WORDS = Set.of("title", "desc");
    private static final Set<String> CLASSES = Set.of(
            "f-line",
            "f-thin",
            "f-dash",
            "f-fill",
            "f-plaster",
            "f-foam",
            "f-liquid",
            "f-metal",
            "f-accent",
            "f-accent-fill",
            "f-text",
            "f-text-small",
            "f-text-strong",
            "f-arrow",
            "f-arrow-head",
            "f-ghs-frame",
            "f-ghs-symbol");
    private static final Pattern NUMBERS = Pattern.compile("[-+0-9.eE, \\s]{1,4000}");
    private static final Pattern PATH = Pattern.compile("[-+0-9.eE,\\sMmLlHhVvCcSsQqTtAaZz]{1,20000}");
    private static final Pattern TRANSFORM = Pattern.compile(
            "\\s*((translate|rotate|scale|skewX|skewY|matrix)\\([-+0-9.eE, ]{1,200}\\)\\s*,?\\s*){1,8}");
    private static final Map<String, Pattern> ATTRIBUTES = attributes();

    private final Problems problems;
    private final String idPrefix;
    private final StringBuilder markup = new StringBuilder();
    private final HtmlWriter writer = new HtmlWriter(markup);
    private final Deque<Boolean> open = new ArrayDeque<>();
    private String viewBox = "";

    private FigureReader(Problems problems, String idPrefix) {
        this.problems = problems;
        this.idPrefix = idPrefix;
    }

    /** The figure, or empty with everything that is wrong reported. */
    public static Optional<Figure> read(String path, String text, Problems problems) {
        String name = path.substring(path.lastIndexOf('/') + 1);
        FigureReader reader = new FigureReader(problems, name.replaceFirst("\\.svg$", ""));
        reader.walk(text);
        return problems.none()
                ? Optional.of(new Figure(name, reader.viewBox, reader.markup.toString()))
                : Optional.empty();
    }

    private void walk(String text) {
        try {
            XMLStreamReader xml = factory().createXMLStreamReader(new StringReader(text));
            while (xml.hasNext()) {
                event(xml.next(), xml);
            }
        } catch (XMLStreamException e) {
            int line = e.getLocation() == null ? 1 : Math.max(1, e.getLocation().getLineNumber());
            problems.add(line, "figure", "is not well-formed SVG here; draw it again or export it as plain SVG");
        }
    }

    /** The platform's own reader, told to expand nothing and to fetch nothing. */
    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
        factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, true);
        return factory;
    }

    private void event(int event, XMLStreamReader xml) {
        switch (event) {
            case XMLStreamConstants.START_ELEMENT -> begin(xml);
            case XMLStreamConstants.END_ELEMENT -> end(xml);
            case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> words(xml);
            case XMLStreamConstants.DTD -> refuse(xml, "a document type (<!DOCTYPE …>) is not allowed; take it out");
            case XMLStreamConstants.ENTITY_REFERENCE ->
                refuse(xml, "entities are not allowed; write the character itself");
            default -> {
                // Comments, processing instructions and space between elements are left out.
            }
        }
    }

    private void begin(XMLStreamReader xml) {
        String name = xml.getLocalName();
        boolean root = open.isEmpty();
        boolean ours = SVG.equals(xml.getNamespaceURI()) && ELEMENTS.contains(name) && root == name.equals("svg");
        boolean skipped = isSkipped() || !ours;
        if (!ours && !(WORDS.contains(name) && SVG.equals(xml.getNamespaceURI()))) {
            refuse(xml, "<%s> is not allowed; use %s".formatted(xml.getName().getLocalPart(), allowedWords()));
        }
        open.push(skipped);
        if (skipped) {
            return;
        }
        Map<String, String> attributes = attributesOf(xml);
        if (root) {
            viewBox = attributes.getOrDefault("viewBox", "");
            if (viewBox.isEmpty()) {
                refuse(xml, "<svg> has no viewBox; write viewBox=\"0 0 640 360\"");
            }
        } else {
            writer.tag(name, attributes);
        }
    }

    private void end(XMLStreamReader xml) {
        boolean skipped = open.pop();
        if (!skipped && !open.isEmpty()) {
            writer.tag("/" + xml.getLocalName());
        }
    }

    private void words(XMLStreamReader xml) {
        if (!isSkipped()) {
            writer.text(xml.getText());
        }
    }

    private boolean isSkipped() {
        return !open.isEmpty() && open.peek();
    }

    private Map<String, String> attributesOf(XMLStreamReader xml) {
        Map<String, String> kept = new LinkedHashMap<>();
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            String name = xml.getAttributeLocalName(i);
            String value = xml.getAttributeValue(i);
            String wrong = xml.getAttributeNamespace(i) == null
                    ? wrongWith(name, value, xml.getLocalName())
                    : "is not allowed";
            if (wrong.isEmpty()) {
                kept.put(name, value);
            } else {
                refuse(xml, "“%s” on <%s> %s".formatted(name, xml.getLocalName(), wrong));
            }
        }
        return kept;
    }

    private String wrongWith(String name, String value, String element) {
        Pattern shape = ATTRIBUTES.get(name);
        if (shape == null || element.equals("svg") && !name.equals("viewBox") && !name.equals("class")) {
            return "is not allowed; take it out";
        }
        if (!shape.matcher(value).matches()) {
            return "has a value that is not allowed there";
        }
        if (name.equals("class")) {
            return classesAreOurs(value) ? "" : "names a class that is not in the figure kit: " + value;
        }
        return name.equals("id") && !value.startsWith(idPrefix) ? "must begin with “" + idPrefix + "”" : "";
    }

    private static boolean classesAreOurs(String value) {
        for (String one : value.strip().split("\\s+")) {
            if (!CLASSES.contains(one)) {
                return false;
            }
        }
        return true;
    }

    private void refuse(XMLStreamReader xml, String message) {
        problems.add(xml.getLocation().getLineNumber(), "figure", message);
    }

    private static String allowedWords() {
        return String.join(", ", ELEMENTS.stream().sorted().toList());
    }

    private static Map<String, Pattern> attributes() {
        Map<String, Pattern> all = new LinkedHashMap<>();
        for (String name : "x y x1 y1 x2 y2 cx cy r rx ry dx dy width height points viewBox font-size".split(" ")) {
            all.put(name, NUMBERS);
        }
        all.put("d", PATH);
        all.put("transform", TRANSFORM);
        all.put("class", Pattern.compile("[a-z -]{1,200}"));
        all.put("id", Pattern.compile("[a-z0-9][a-z0-9-]{0,80}"));
        all.put("text-anchor", Pattern.compile("start|middle|end"));
        all.put("dominant-baseline", Pattern.compile("auto|middle|central|hanging"));
        all.put("stroke-linecap", Pattern.compile("butt|round|square"));
        all.put("stroke-linejoin", Pattern.compile("miter|round|bevel"));
        all.put("fill-rule", Pattern.compile("nonzero|evenodd"));
        all.put("fill", Pattern.compile("none"));
        return all;
    }
}
