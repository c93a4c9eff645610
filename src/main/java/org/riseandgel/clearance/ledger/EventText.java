package org.riseandgel.clearance.ledger;

import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.jsontype.NamedType;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdDelegatingSerializer;
import com.fasterxml.jackson.databind.util.StdConverter;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;
import org.riseandgel.clearance.rule.Body;

/**
 * What a line says, as JSON text: who wrote it, when it happened, and the event with its kind. The text is made once and
 * kept as it is; hashes are over its bytes. Reading is strict: a line with anything missing or unknown cannot be read, and
 * then the register clears nobody.
 */
public final class EventText {
    private static final ObjectMapper JSON = mapper();
    private static final Pattern ID = Pattern.compile("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}");

    private EventText() {}

    /**
     * The content of a line.
     *
     * @param by who wrote it down; null when the program did
     * @param effective when it happened
     */
    public record Content(UUID by, Instant effective, Body said) {}

    /** The content as text; the same content always gives the same text. */
    public static String write(Content content) {
        return canonical(content);
    }

    /** A record of the rule as text, names and sets in order; the same record always gives the same text. */
    public static String canonical(Object said) {
        try {
            return JSON.writeValueAsString(said);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(
                    "This cannot be written into the register: " + e.getOriginalMessage(), e);
        }
    }

    /**
     * Reads a content back.
     *
     * @throws IllegalArgumentException when any part of it is missing, unknown or of the wrong kind
     */
    public static Content read(String text) {
        try {
            Content content = JSON.readValue(text, Content.class);
            if (content == null || content.effective() == null || content.said() == null) {
                throw new IllegalArgumentException("A line of the register says nothing.");
            }
            return content;
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("A line of the register cannot be read: " + e.getOriginalMessage(), e);
        }
    }

    /** Every id that stands in an event. */
    public static Set<UUID> ids(Body said) {
        Set<UUID> ids = new LinkedHashSet<>();
        JsonNode tree = JSON.valueToTree(said);
        collect(tree, ids);
        return ids;
    }

    private static void collect(JsonNode node, Set<UUID> ids) {
        if (node.isTextual() && ID.matcher(node.textValue()).matches()) {
            ids.add(UUID.fromString(node.textValue()));
        }
        node.forEach(inner -> collect(inner, ids));
    }

    /** Every kind of event there is, in the order of the alphabet. */
    public static List<String> kinds() {
        return Arrays.stream(Body.class.getPermittedSubclasses())
                .flatMap(group -> Arrays.stream(group.getPermittedSubclasses()))
                .map(EventText::name)
                .sorted()
                .toList();
    }

    /** The kind of an event, such as {@code training-given}. */
    public static String kind(Body said) {
        return name(said.getClass());
    }

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "type")
    private interface WithKind {}

    private static ObjectMapper mapper() {
        SimpleModule sets = new SimpleModule("sets in order");
        sets.addSerializer(Set.class, new StdDelegatingSerializer(Set.class, new InOrder()));
        JsonMapper.Builder builder = JsonMapper.builder()
                .addModule(new JavaTimeModule())
                .addModule(sets)
                .addMixIn(Body.class, WithKind.class)
                .enable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
                .disable(MapperFeature.AUTO_DETECT_IS_GETTERS)
                .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
                .disable(DeserializationFeature.ADJUST_DATES_TO_CONTEXT_TIME_ZONE)
                .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
                .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
                .enable(DeserializationFeature.FAIL_ON_NUMBERS_FOR_ENUMS)
                .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);
        for (Class<?> group : Body.class.getPermittedSubclasses()) {
            for (Class<?> kind : group.getPermittedSubclasses()) {
                builder.registerSubtypes(new NamedType(kind, name(kind)));
            }
        }
        return builder.build();
    }

    private static String name(Class<?> kind) {
        return kind.getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
    }

    /** Sets have no order of their own: numbers come by size, everything else by its text. */
    @SuppressWarnings("rawtypes")
    private static final class InOrder extends StdConverter<Set, List<?>> {
        private static final Comparator<Object> BY_TEXT = Comparator.comparing(EventText.InOrder::text);

        @Override
        public List<?> convert(Set set) {
            List<Object> all = new ArrayList<>();
            for (Object one : set) {
                all.add(one);
            }
            all.sort(BY_TEXT);
            return all;
        }

        private static String text(Object one) {
            return one instanceof Number number ? "%020d".formatted(number.longValue()) : one.toString();
        }
    }
}
