package org.riseandgel.platform.content;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A piece of YAML that knows the line it stands on, so that whatever is wrong with it can be pointed at. */
public sealed interface YamlNode {
    /** The line where it begins, counted from 1. */
    int line();

    /** A single value, as text; an empty value is an empty text. */
    record Scalar(int line, String text) implements YamlNode {}

    /** A list. */
    record Sequence(int line, List<YamlNode> items) implements YamlNode {
        public Sequence {
            items = List.copyOf(items);
        }
    }

    /** Names with their values, in the order of the file. */
    record Mapping(int line, Map<String, Entry> entries) implements YamlNode {
        public Mapping {
            entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
        }
    }

    /** A value and the line of its name. */
    record Entry(int line, YamlNode value) {}
}
