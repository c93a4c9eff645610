package org.riseandgel.clearance.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.riseandgel.clearance.rule.Body;
import org.riseandgel.clearance.rule.Keeping;

class VerificationTest {
    private static final Instant START = Instant.parse("2027-03-04T09:00:00.5Z");

    private final List<Line> lines = new ArrayList<>();

    VerificationTest() {
        Sample.all().stream().filter(said -> !(said instanceof Keeping.Purged)).forEach(this::add);
    }

    @Test
    void cr14_anExportChecksOutByItself() {
        String file = ExportFile.write(lines);
        Verification.Report report = Verification.ofFile(file);
        assertThat(report.findings()).isEmpty();
        assertThat(report.lines()).isEqualTo(lines.size()).isGreaterThan(30);
        assertThat(ExportFile.write(List.copyOf(lines))).as("the same bytes").isEqualTo(file);
        assertThat(Verification.of(lines).isSound()).isTrue();
        assertThat(Verification.ofFile(ExportFile.write(List.of())).isSound()).isTrue();
    }

    @Test
    void cr14_theHashesAreWhatAnotherReadingOfThePageGives() throws Exception {
        // Put together here from docs/register.md alone, with the JDK's own SHA-256.
        Line line = lines.get(4);
        byte[] salt = HexFormat.of().parseHex(line.salt());
        MessageDigest sha = MessageDigest.getInstance("SHA-256");
        sha.update(salt);
        String content = HexFormat.of().formatHex(sha.digest(line.content().getBytes(StandardCharsets.UTF_8)));
        String parts = "register\n5\n" + line.id() + "\n2027-03-04T09:00:04.500000Z\n" + content + "\n"
                + lines.get(3).hash();
        assertThat(line.hash())
                .isEqualTo(HexFormat.of()
                        .formatHex(
                                MessageDigest.getInstance("SHA-256").digest(parts.getBytes(StandardCharsets.UTF_8))));
    }

    @Test
    void cr14_everyFlippedByteIsFoundAndItsRowNamed() {
        List<String> rows = ExportFile.write(lines).lines().toList();
        String row = rows.get(6);
        for (int at = 0; at < row.length(); at++) {
            char other = row.charAt(at) == '1' ? '2' : '1';
            List<String> changed = new ArrayList<>(rows);
            changed.set(6, row.substring(0, at) + other + row.substring(at + 1));
            Verification.Report report = Verification.ofFile(String.join("\n", changed) + "\n");
            assertThat(report.isSound()).as(changed.get(6)).isFalse();
            assertThat(report.findings().get(0).number()).as("byte %d", at).isEqualTo(7);
        }
    }

    @Test
    void aLineThatIsMissingMovedOrCutOffIsFound() {
        List<Line> without = new ArrayList<>(lines);
        without.remove(4);
        assertThat(Verification.of(without).findings().get(0).number()).isEqualTo(5);
        List<Line> swapped = new ArrayList<>(lines);
        swapped.set(2, lines.get(3));
        swapped.set(3, lines.get(2));
        assertThat(Verification.of(swapped).isSound()).isFalse();
        String file = ExportFile.write(lines);
        String cut = file.lines().limit(lines.size() - 2).reduce("", (all, row) -> all + row + "\n");
        assertThat(Verification.ofFile(cut).findings().toString()).contains("it was cut");
        String shortened = cut + file.lines().reduce("", (all, row) -> row);
        assertThat(Verification.ofFile(shortened).findings().toString()).contains("not the one that follows");
        assertThat(Verification.ofFile("").isSound()).isFalse();
    }

    @Test
    void aChangedLineWithHashesMadeAnewBreaksTheNextLink() {
        Line old = lines.get(3);
        String content = old.content().replace("2027", "2026");
        String contentHash = Seal.ofText(old.salt(), content);
        lines.set(
                3,
                new Line(
                        old.number(),
                        old.id(),
                        old.recorded(),
                        content,
                        old.salt(),
                        contentHash,
                        old.previous(),
                        Seal.ofLine(old.number(), old.id(), old.recorded(), contentHash, old.previous())));
        assertThat(Verification.of(lines).findings())
                .extracting(Verification.Finding::number)
                .containsExactly(5L);
    }

    @Test
    void cr24_whatWasErasedIsListedByALaterLine() {
        purge(3);
        purge(8);
        assertThat(Verification.of(lines).findings()).hasSize(2).allSatisfy(finding -> assertThat(finding.message())
                .contains("was erased"));
        Map<Long, String> hashes = new HashMap<>();
        lines.forEach(line -> hashes.put(line.number(), line.hash()));
        add(new Keeping.Purged(2, Set.of(3L, 8L), Verification.digest(Set.of(3L, 8L), hashes)));
        assertThat(Verification.of(lines).findings()).isEmpty();
        assertThat(Verification.ofFile(ExportFile.write(lines)).findings()).isEmpty();
        add(new Keeping.Purged(1, Set.of(5L), Verification.digest(Set.of(5L), hashes)));
        assertThat(Verification.of(lines).findings().toString()).contains("lists lines as erased that are not");
    }

    @Test
    void theCommandNamesTheRowAndEndsWithItsCode(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("register.jsonl");
        String text = ExportFile.write(lines);
        Files.writeString(file, text);
        assertThat(run(file).code()).isZero();
        assertThat(run(file).out()).contains("Sound.").contains(Seal.of(text.getBytes(StandardCharsets.UTF_8)));
        Files.writeString(file, text.replaceFirst("Supplier A", "Supplier B"));
        assertThat(run(file).code()).isEqualTo(1);
        assertThat(run(file).out()).contains("Line ").contains("Not sound");
        assertThat(run(folder.resolve("missing")).code()).isEqualTo(2);
        assertThat(VerifyCommand.run(List.of(), System.out, new PrintStream(new ByteArrayOutputStream())))
                .isEqualTo(2);
    }

    private record Ran(int code, String out) {}

    private static Ran run(Path file) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintStream printed = new PrintStream(out, true, StandardCharsets.UTF_8);
        int code = VerifyCommand.run(List.of(file.toString()), printed, printed);
        return new Ran(code, out.toString(StandardCharsets.UTF_8));
    }

    private void purge(int number) {
        Line old = lines.get(number - 1);
        lines.set(
                number - 1,
                new Line(
                        old.number(),
                        old.id(),
                        old.recorded(),
                        null,
                        null,
                        old.contentHash(),
                        old.previous(),
                        old.hash()));
    }

    private void add(Body said) {
        long number = lines.size() + 1L;
        Instant recorded = START.plusSeconds(lines.size());
        String content = EventText.write(new EventText.Content(new UUID(9, 9), START, said));
        String salt = "%032x".formatted(number * 7919);
        String contentHash = Seal.ofText(salt, content);
        String previous =
                lines.isEmpty() ? Seal.BEGINNING : lines.get(lines.size() - 1).hash();
        UUID id = new UUID(4, number);
        lines.add(new Line(
                number,
                id,
                recorded,
                content,
                salt,
                contentHash,
                previous,
                Seal.ofLine(number, id, recorded, contentHash, previous)));
    }
}
