package org.riseandgel.clearance.ledger;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;

/**
 * The register as a file: JSON Lines (one JSON object a line, UTF-8), the lines of the register in order and a last line
 * that says how many they are. The same lines always give the same bytes. Free texts, names, dates of birth and the
 * supplier's sheets are not in it; it holds what proves them.
 */
public final class ExportFile {
    private static final String FORMAT = "register-lines";
    private static final JsonFactory JSON = new JsonFactory();

    private ExportFile() {}

    /** The text of the file. */
    public static String write(List<Line> lines) {
        StringBuilder file = new StringBuilder();
        lines.forEach(line -> file.append(write(line)).append('\n'));
        String head =
                lines.isEmpty() ? Seal.BEGINNING : lines.get(lines.size() - 1).hash();
        return file.append(last(lines.size(), head)).append('\n').toString();
    }

    static String write(Line line) {
        return object(json -> {
            json.writeNumberField("number", line.number());
            json.writeStringField("id", line.id().toString());
            json.writeStringField("recorded", Seal.micros(line.recorded()));
            json.writeStringField("content", line.content());
            json.writeStringField("salt", line.salt());
            json.writeStringField("contentHash", line.contentHash());
            json.writeStringField("previous", line.previous());
            json.writeStringField("hash", line.hash());
        });
    }

    static String last(int count, String head) {
        return object(json -> {
            json.writeStringField("format", FORMAT);
            json.writeNumberField("lines", count);
            json.writeStringField("head", head);
            json.writeStringField(
                    "leftOut", "free texts, names, dates of birth, safety data sheets; their hashes are in the lines");
        });
    }

    private static String object(Fields fields) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = JSON.createGenerator(text)) {
            json.writeStartObject();
            fields.write(json);
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private interface Fields {
        void write(JsonGenerator json) throws IOException;
    }
}
