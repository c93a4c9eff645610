package org.riseandgel.clearance.ledger;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.NullNode;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.riseandgel.clearance.rule.Keeping;

/**
 * Checks the lines of the register, or a file that was made of them, by nothing but themselves: places, links, hashes,
 * times that never go back, contents that can be read, and that whatever was erased is listed by a later line.
 */
public final class Verification {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final List<Finding> findings = new ArrayList<>();
    private final Map<Long, String> purged = new HashMap<>();
    private final Set<Long> listed = new HashSet<>();
    private Line before;
    private int count;

    private Verification() {}

    /**
     * Something that is wrong.
     *
     * @param number the place in the register; 0 when it concerns the whole
     */
    public record Finding(long number, String message) {
        @Override
        public String toString() {
            return number == 0 ? message : "Line %d: %s".formatted(number, message);
        }
    }

    /**
     * What was found.
     *
     * @param lines how many lines were looked at
     * @param head the hash of the last one
     */
    public record Report(int lines, String head, List<Finding> findings) {
        public Report {
            findings = List.copyOf(findings);
        }

        public boolean isSound() {
            return findings.isEmpty();
        }
    }

    /** Checks lines that were read elsewhere. */
    public static Report of(Iterable<Line> lines) {
        Verification verification = new Verification();
        lines.forEach(verification::check);
        return verification.report();
    }

    /** Checks the text of an export. */
    public static Report ofFile(String text) {
        Verification verification = new Verification();
        List<String> rows = text.lines().toList();
        for (int i = 0; i + 1 < rows.size(); i++) {
            verification.row(rows.get(i));
        }
        verification.last(rows.isEmpty() ? "" : rows.get(rows.size() - 1));
        return verification.report();
    }

    private void row(String text) {
        Optional<Line> line = parse(text);
        if (line.isPresent()) {
            check(line.get());
            if (!ExportFile.write(line.get()).equals(text)) {
                find("is not written as the register writes its lines.");
            }
        } else {
            count++;
            find("cannot be read.");
            before = null;
        }
    }

    private static Optional<Line> parse(String text) {
        try {
            JsonNode json = JSON.readTree(text);
            return Optional.of(new Line(
                    json.path("number").asLong(),
                    UUID.fromString(json.path("id").asText()),
                    Instant.parse(json.path("recorded").asText()),
                    text(json, "content"),
                    text(json, "salt"),
                    json.path("contentHash").asText(),
                    json.path("previous").asText(),
                    json.path("hash").asText()));
        } catch (JsonProcessingException | DateTimeException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static String text(JsonNode json, String name) {
        JsonNode value = json.path(name);
        return value instanceof NullNode || value.isMissingNode() ? null : value.asText();
    }

    private void last(String text) {
        String right = ExportFile.last(count, head());
        if (!text.startsWith(right.substring(0, right.indexOf(':')))) {
            findings.add(new Finding(
                    0, "The file does not end with the row that says how many lines there are: it was cut."));
        } else if (!text.equals(right)) {
            findings.add(new Finding(
                    0, "The last row of the file is not the one that follows from its lines, which is: " + right));
        }
    }

    private void check(Line line) {
        count++;
        if (line.number() != count) {
            find("says that it is line %d.".formatted(line.number()));
        }
        if (line.isPurged() != (line.salt() == null)) {
            find("what it says and its salt are not erased together.");
        } else {
            Seal.problem(line).ifPresent(problem -> find(problem + "."));
        }
        if (before != null || count == 1) {
            follows(line);
        }
        content(line);
        before = line;
    }

    private void follows(Line line) {
        String link = before == null ? Seal.BEGINNING : before.hash();
        if (!line.previous().equals(link)) {
            find("does not name the hash of the line before it.");
        }
        if (before != null && line.recorded().isBefore(before.recorded())) {
            find("was recorded before the line before it.");
        }
    }

    private void content(Line line) {
        if (line.isPurged()) {
            purged.put(line.number(), line.hash());
            return;
        }
        try {
            EventText.Content content = EventText.read(line.content());
            if (content.effective().isAfter(line.recorded())) {
                find("was recorded before it happened.");
            }
            if (content.said() instanceof Keeping.Purged said) {
                purge(line, said);
            }
        } catch (IllegalArgumentException e) {
            find("what it says cannot be read.");
        }
    }

    private void purge(Line line, Keeping.Purged said) {
        listed.addAll(said.numbers());
        boolean all = purged.keySet().containsAll(said.numbers())
                && said.count() == said.numbers().size();
        if (!all) {
            find("lists lines as erased that are not.");
        } else if (!digest(said.numbers(), purged).equals(said.digest())) {
            find("lists erased lines with other hashes.");
        }
    }

    /** SHA-256 over the hashes of some lines in their order, one under the other. */
    public static String digest(Set<Long> numbers, Map<Long, String> hashes) {
        String all =
                String.join("\n", numbers.stream().sorted().map(hashes::get).toList());
        return Seal.of(all.getBytes(java.nio.charset.StandardCharsets.US_ASCII));
    }

    private void find(String message) {
        findings.add(new Finding(count, message));
    }

    private String head() {
        return before == null ? Seal.BEGINNING : before.hash();
    }

    private Report report() {
        purged.keySet().stream()
                .filter(number -> !listed.contains(number))
                .sorted()
                .forEach(number -> findings.add(new Finding(number, "was erased, and no later line says so.")));
        return new Report(count, head(), findings);
    }
}
