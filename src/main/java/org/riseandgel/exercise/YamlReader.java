package org.riseandgel.exercise;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads YAML into {@link YamlNode}s. A plain subset: one document, no anchors, aliases or tags, at most
 * {@value #DEEPEST} levels and {@value #LONGEST} characters; a name that appears twice is a problem.
 */
public final class YamlReader {
    static final int LONGEST = 20_000;
    static final int DEEPEST = 12;
    private static final YAMLFactory FACTORY = new YAMLFactory();

    private final Problems problems;
    private final YAMLParser parser;

    private YamlReader(YAMLParser parser, Problems problems) {
        this.parser = parser;
        this.problems = problems;
    }

    /** The file's content; empty when it is no YAML, with the reason among the problems. */
    public static Optional<YamlNode> read(String text, Problems problems) {
        if (text.length() > LONGEST) {
            problems.add(1, "", "The file has %d characters; at most %d are read.".formatted(text.length(), LONGEST));
            return Optional.empty();
        }
        try (YAMLParser parser = FACTORY.createParser(text)) {
            return new YamlReader(parser, problems).document();
        } catch (JsonProcessingException unreadable) {
            problems.add(lineOf(unreadable.getLocation()), "", notYaml(unreadable));
            return Optional.empty();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private Optional<YamlNode> document() throws IOException {
        if (parser.nextToken() == null) {
            problems.add(1, "", "The file is empty.");
            return Optional.empty();
        }
        YamlNode root = node("", 0);
        if (parser.nextToken() != null) {
            problems.add(line(), "", "A second document starts here (---); a file holds one.");
        }
        return Optional.of(root);
    }

    private YamlNode node(String field, int depth) throws IOException {
        refuseReferences(field);
        JsonToken token = parser.currentToken();
        if (token != JsonToken.START_OBJECT && token != JsonToken.START_ARRAY) {
            return new YamlNode.Scalar(line(), token == JsonToken.VALUE_NULL ? null : parser.getText());
        }
        if (depth == DEEPEST) {
            problems.add(line(), field, "Nested more than %d levels deep.".formatted(DEEPEST));
            parser.skipChildren();
            return new YamlNode.Scalar(line(), null);
        }
        return token == JsonToken.START_OBJECT ? mapping(field, depth + 1) : sequence(field, depth + 1);
    }

    private YamlNode mapping(String field, int depth) throws IOException {
        int line = line();
        Map<String, YamlNode.Entry> entries = new LinkedHashMap<>();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String name = parser.currentName();
            int nameLine = line();
            parser.nextToken();
            String inner = field.isEmpty() ? name : field + "." + name;
            YamlNode value = node(inner, depth);
            if (entries.putIfAbsent(name, new YamlNode.Entry(nameLine, value)) != null) {
                problems.add(nameLine, inner, "Stands here a second time; a name may appear only once.");
            }
        }
        return new YamlNode.Mapping(line, entries);
    }

    private YamlNode sequence(String field, int depth) throws IOException {
        int line = line();
        List<YamlNode> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(node(field + "[" + (items.size() + 1) + "]", depth));
        }
        return new YamlNode.Sequence(line, items);
    }

    private void refuseReferences(String field) throws IOException {
        if (parser.isCurrentAlias() || parser.getObjectId() != null || parser.getTypeId() != null) {
            problems.add(
                    line(), field, "Anchors (&), aliases (*) and tags (!) are not used here; write the value out.");
        }
    }

    private int line() {
        return lineOf(parser.currentTokenLocation());
    }

    private static int lineOf(JsonLocation location) {
        return location == null ? 1 : Math.max(1, location.getLineNr());
    }

    private static String notYaml(JsonProcessingException unreadable) {
        String said = unreadable.getOriginalMessage();
        return "This is no YAML: %s. Check the indentation, and put quotes around text that holds a colon or a brace."
                .formatted(said.lines().findFirst().orElse("unreadable").strip());
    }
}
