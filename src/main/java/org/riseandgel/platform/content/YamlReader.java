package org.riseandgel.platform.content;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads one YAML document into nodes with line numbers. Anchors and aliases are refused, since a few lines of them can
 * stand for millions; so are repeated names and deep nesting.
 */
public final class YamlReader {
    private static final YAMLFactory YAML = new YAMLFactory();
    private static final int DEEPEST = 20;

    private final YAMLParser parser;
    private final int linesBefore;

    private YamlReader(YAMLParser parser, int linesBefore) {
        this.parser = parser;
        this.linesBefore = linesBefore;
    }

    /**
     * Reads a text that begins after the given number of lines of its file.
     *
     * @throws YamlFault when it is not one well-formed document
     */
    public static YamlNode read(String text, int linesBefore) throws YamlFault {
        try (YAMLParser parser = YAML.createParser(text)) {
            return new YamlReader(parser, linesBefore).document();
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 1 : Math.max(1, e.getLocation().getLineNr());
            throw new YamlFault(linesBefore + line, "is not YAML here: " + firstLine(e.getOriginalMessage()));
        } catch (IOException e) {
            throw new IllegalStateException("A text in memory could not be read", e);
        }
    }

    private YamlNode document() throws IOException, YamlFault {
        if (parser.nextToken() == null) {
            return new YamlNode.Scalar(linesBefore + 1, "");
        }
        YamlNode node = value(0);
        if (parser.nextToken() != null) {
            throw new YamlFault(line(), "a second document begins here; keep one");
        }
        return node;
    }

    private YamlNode value(int depth) throws IOException, YamlFault {
        if (depth > DEEPEST) {
            throw new YamlFault(line(), "is nested more than " + DEEPEST + " deep; make it flatter");
        }
        if (parser.isCurrentAlias() || parser.getObjectId() != null) {
            throw new YamlFault(line(), "anchors (&) and aliases (*) are not read here; write the value out");
        }
        return switch (parser.currentToken()) {
            case START_OBJECT -> mapping(depth);
            case START_ARRAY -> sequence(depth);
            case VALUE_NULL -> new YamlNode.Scalar(line(), "");
            default -> new YamlNode.Scalar(line(), parser.getText());
        };
    }

    private YamlNode mapping(int depth) throws IOException, YamlFault {
        int begin = line();
        Map<String, YamlNode.Entry> entries = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            int nameLine = line();
            parser.nextToken();
            if (entries.put(name, new YamlNode.Entry(nameLine, value(depth + 1))) != null) {
                throw new YamlFault(nameLine, "“" + name + "” is here twice; keep one");
            }
        }
        return new YamlNode.Mapping(begin, entries);
    }

    private YamlNode sequence(int depth) throws IOException, YamlFault {
        int begin = line();
        List<YamlNode> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(value(depth + 1));
        }
        return new YamlNode.Sequence(begin, items);
    }

    private int line() {
        return linesBefore + parser.currentTokenLocation().getLineNr();
    }

    private static String firstLine(String message) {
        return message.lines().findFirst().orElse("").strip();
    }
}
