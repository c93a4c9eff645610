package org.riseandgel.clearance.pages;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Objects;
import java.util.UUID;
import org.riseandgel.clearance.PersonRecord;
import org.riseandgel.clearance.RegisterBook;

/** Everything on record about one person, as a file to take along: JSON Lines, UTF-8, the newest line first. */
@ApplicationScoped
class OwnRecordFile {
    private static final JsonFactory JSON = new JsonFactory();

    private final PersonRecord records;
    private final RegisterBook book;

    OwnRecordFile(PersonRecord records, RegisterBook book) {
        this.records = records;
        this.book = book;
    }

    String of(UUID person) {
        StringBuilder file = new StringBuilder();
        records.of(person).forEach(line -> file.append(line(line)).append('\n'));
        book.asked(person, Integer.MAX_VALUE)
                .forEach(asked -> file.append(question(asked)).append('\n'));
        return file.toString();
    }

    private static String line(PersonRecord.RecordLine line) {
        return object(json -> {
            json.writeNumberField("number", line.number());
            json.writeStringField("id", line.id().toString());
            json.writeStringField("effective", line.effective().toString());
            json.writeStringField("recorded", line.recorded().toString());
            json.writeStringField("recordedBy", Objects.toString(line.recordedBy(), null));
            json.writeFieldName("said");
            json.writeRawValue(line.text());
            json.writeArrayFieldStart("texts");
            for (String note : line.notes()) {
                json.writeString(note);
            }
            json.writeEndArray();
            json.writeObjectFieldStart("names");
            for (var name : line.names().entrySet()) {
                json.writeStringField(name.getKey().toString(), name.getValue());
            }
            json.writeEndObject();
            json.writeBooleanField("corrected", line.corrected());
        });
    }

    private static String question(RegisterBook.Asked asked) {
        return object(json -> {
            json.writeStringField("asked", asked.at().toString());
            json.writeStringField("task", asked.task());
            json.writeStringField("answer", asked.status());
            json.writeStringField("reason", asked.reason());
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
