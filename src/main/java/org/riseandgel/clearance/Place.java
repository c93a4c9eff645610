package org.riseandgel.clearance;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.Set;
import java.util.UUID;
import org.riseandgel.clearance.ledger.Seal;
import org.riseandgel.clearance.rule.Form;
import org.riseandgel.clearance.rule.Question;
import org.riseandgel.clearance.rule.Scope;
import org.riseandgel.clearance.rule.Substance;
import org.riseandgel.clearance.rule.Task;

/** A substance in one form in one room: what a question at a door is about, besides person and task. */
public record Place(Substance substance, Form form, String room) {
    /** The place of a scope. */
    public static Place of(Scope scope) {
        return new Place(scope.substance(), scope.form(), scope.room());
    }

    /** An id that is the same for the same place everywhere: the first half of a SHA-256 over its parts. */
    public UUID id() {
        String parts = String.join("\n", substance.name(), substance.cas(), substance.supplier(), form.name(), room);
        ByteBuffer hash = ByteBuffer.wrap(HexFormat.of().parseHex(Seal.of(parts.getBytes(StandardCharsets.UTF_8))));
        return new UUID(hash.getLong(), hash.getLong());
    }

    /** The question whether somebody may do a task here. */
    public Question question(UUID person, Task task) {
        return new Question(person, substance, form, room, Set.of(task));
    }
}
