package org.riseandgel.clearance.pages;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.riseandgel.account.feed.NoticeSource.Notice;
import org.riseandgel.clearance.PersonRecord;
import org.riseandgel.clearance.Register;
import org.riseandgel.clearance.rule.Evidence;
import org.riseandgel.clearance.rule.Scope;
import org.riseandgel.clearance.rule.Setting;
import org.riseandgel.clearance.rule.Substance;

/** What in the register waits for the learner alone: practicals to look at and safety data sheets to read. */
@ApplicationScoped
class RecordNotices {
    private final PersonRecord records;
    private final Register register;

    RecordNotices(PersonRecord records, Register register) {
        this.records = records;
        this.register = register;
    }

    /** What waits for this person. */
    List<Notice> noticesFor(UUID person) {
        List<PersonRecord.RecordLine> lines = records.of(person);
        List<Notice> notices = new ArrayList<>();
        OwnPractical.waiting(lines, register.policy())
                .forEach(practical -> notices.add(new Notice(
                        "%s has written down a practical of yours: %s. It counts when you have looked at it."
                                .formatted(practical.observer(), practical.title()),
                        "/register/mine",
                        "Look at it",
                        false)));
        toRead(lines)
                .forEach(sheet -> notices.add(new Notice(
                        "There is a safety data sheet that you have not read: %s, revision %s."
                                .formatted(sheet.substance().supplier(), sheet.label()),
                        "/register/sheets/" + sheet.revision(),
                        "Read it",
                        false)));
        return notices;
    }

    /** The sheets of the substances on which somebody was trained, in their newest revision. */
    private List<Setting.SdsFiled> toRead(List<PersonRecord.RecordLine> lines) {
        Set<Substance> trained = lines.stream()
                .map(PersonRecord.RecordLine::said)
                .filter(Evidence.TrainingGiven.class::isInstance)
                .map(said -> ((Evidence.TrainingGiven) said).substance())
                .collect(Collectors.toSet());
        Set<UUID> read = lines.stream()
                .map(PersonRecord.RecordLine::said)
                .filter(Evidence.SdsRead.class::isInstance)
                .map(said -> ((Evidence.SdsRead) said).revision())
                .collect(Collectors.toSet());
        return trained.isEmpty()
                ? List.of()
                : register.scopes().stream()
                        .map(Scope::substance)
                        .distinct()
                        .filter(trained::contains)
                        .flatMap(substance -> register.sheet(substance).stream())
                        .filter(sheet -> !read.contains(sheet.revision()))
                        .toList();
    }
}
