package org.riseandgel.exercise;

import java.util.List;
import java.util.Map;

/** A piece of a YAML file that remembers its line, so that a problem can be reported where it stands. */
public sealed interface YamlNode {
    /** Line of the first character, counted from 1. */
    int line();

    /** What it is, for messages: "a list". */
    String words();

    /** A single value, its text exactly as written; null text is an empty value. */
    record Scalar(int line, String text) implements YamlNode {
        @Override
        public String words() {
            return text == null ? "empty" : "“" + text.strip() + "”";
        }
    }

    /** Values in order. */
    record Sequence(int line, List<YamlNode> items) implements YamlNode {
        @Override
        public String words() {
            return "a list";
        }
    }

    /** Values by name, in the order of the file. */
    record Mapping(int line, Map<String, Entry> entries) implements YamlNode {
        @Override
        public String words() {
            return "a group of fields";
        }
    }

    /** A value and the line of its name. */
    record Entry(int line, YamlNode value) {}
}
