package org.riseandgel.sitting;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;
import org.riseandgel.course.Check;
import org.riseandgel.exercise.ExerciseLibrary;
import org.riseandgel.exercise.ExerciseTemplate;

/** The names of exact contents: SHA-256 in hexadecimal digits over lines of UTF-8 text. */
final class Digests {
    private Digests() {}

    /**
     * The version of a check: its rule and the version of every exercise in its pool. Another title or other words about
     * the check leave it as it is; another exercise, another word in one, or another rule does not.
     */
    static String poolVersion(Check check, ExerciseLibrary library) {
        List<String> lines = new ArrayList<>();
        lines.add("check " + check.id());
        lines.add("pass %d of %d, critical wrong %d"
                .formatted(check.pass().right(), check.pass().of(), check.pass().criticalWrong()));
        for (Check.Share share : check.shares()) {
            lines.add("share %s levels %s count %d critical %d"
                    .formatted(
                            share.skill(),
                            share.levels().stream().sorted().toList(),
                            share.count(),
                            share.criticalAtLeast()));
            share.pool(library).stream()
                    .map(ExerciseTemplate::toString)
                    .sorted()
                    .forEach(lines::add);
        }
        return ofLines(lines);
    }

    /** What a sitting asked, what was answered and how it was judged, to the letter. */
    static String content(List<StoredItem> items) {
        List<String> lines = new ArrayList<>();
        for (StoredItem item : items) {
            lines.add("%d %s@%s seed %d".formatted(item.number(), item.exercise(), item.version(), item.seed()));
            lines.add("answer " + Objects.toString(item.typed(), ""));
            lines.add("verdict " + item.verdict());
        }
        return ofLines(lines);
    }

    private static String ofLines(List<String> lines) {
        try {
            byte[] text = String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(text));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }
}
