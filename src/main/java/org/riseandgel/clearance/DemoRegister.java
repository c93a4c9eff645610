package org.riseandgel.clearance;

import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import org.jboss.logging.Logger;
import org.riseandgel.account.DemoPeople;
import org.riseandgel.account.SchoolFounded;
import org.riseandgel.clearance.policy.PolicyFile;
import org.riseandgel.clearance.rule.Act;
import org.riseandgel.clearance.rule.Decision;
import org.riseandgel.clearance.rule.Evidence;
import org.riseandgel.clearance.rule.Form;
import org.riseandgel.clearance.rule.Policy;
import org.riseandgel.clearance.rule.Scope;
import org.riseandgel.clearance.rule.Setting;
import org.riseandgel.clearance.rule.Substance;
import org.riseandgel.clearance.rule.Task;
import org.riseandgel.clearance.rule.Trigger;

/**
 * The register of the demo school: two rooms, one invented supplier, and people who are cleared, about to run out,
 * suspended, supervised only and in training. Every clearance in it was granted by the rule.
 */
@ApplicationScoped
class DemoRegister {
    static final Substance SALT = new Substance("Sodium hexafluorosilicate", "16893-85-9", "Supplier A");
    static final String FOAMING_ROOM = "Foaming room";
    static final String WEIGHING_ROOM = "Weighing room";

    private static final Logger LOG = Logger.getLogger(DemoRegister.class);
    private static final int AFTER_PRACTICE = 300;
    private static final int BEGINNING = 420;

    private final DemoScribe scribe;
    private final PolicyFile file;
    private final Clock clock;

    DemoRegister(DemoScribe scribe, PolicyFile file, Clock clock) {
        this.scribe = scribe;
        this.file = file;
        this.clock = clock;
    }

    /** Something that happened so many days ago. */
    private record Happening(Instant at, Runnable what) {}

    void fill(@Observes @Priority(AFTER_PRACTICE) SchoolFounded founded) {
        if (!founded.demo()) {
            return;
        }
        file.read()
                .policy()
                .ifPresentOrElse(
                        this::write,
                        () -> LOG.warn("The demo school has no register, since its policy cannot be used"));
    }

    private void write(Policy policy) {
        Instant now = clock.instant();
        Scope dispersion = new Scope(
                id(201),
                "Dispersion in the foaming room",
                SALT,
                Form.DISPERSION,
                java.util.EnumSet.allOf(Task.class),
                FOAMING_ROOM,
                policy.needsRespirator(Form.DISPERSION, java.util.EnumSet.allOf(Task.class)));
        Scope powder = new Scope(
                id(202),
                "Powder in the weighing room",
                SALT,
                Form.POWDER,
                java.util.EnumSet.of(Task.STORE, Task.WEIGH, Task.DISPERSE, Task.CLEAN, Task.SPILL),
                WEIGHING_ROOM,
                true);
        DemoStory story = new DemoStory(scribe, policy, dispersion);
        List<Happening> acts = new ArrayList<>();
        add(acts, now, BEGINNING, at -> {
            scribe.write(DemoPeople.SAFETY_LEAD, at, new Setting.PolicyInForce(policy));
            scribe.write(DemoPeople.SAFETY_LEAD, at, new Setting.ScopeDefined(dispersion));
            scribe.write(DemoPeople.SAFETY_LEAD, at, new Setting.ScopeDefined(powder));
            story.fileSheet(at);
            qualify(DemoPeople.INSTRUCTOR, Act.TRAIN, DemoPeople.SAFETY_LEAD, at, now);
            qualify(DemoPeople.INSTRUCTOR, Act.OBSERVE, DemoPeople.SAFETY_LEAD, at, now);
            for (Act act : Act.values()) {
                qualify(DemoPeople.SAFETY_LEAD, act, DemoPeople.OFFICE, at, now);
            }
            LocalDate today = story.day(now);
            story.born(DemoPeople.INSTRUCTOR, LocalDate.of(1984, 2, 11), at);
            story.born(DemoPeople.SAFETY_LEAD, LocalDate.of(1971, 9, 30), at);
            story.born(DemoPeople.ANOUK, LocalDate.of(1999, 4, 2), at);
            story.born(DemoPeople.BASTIAN, LocalDate.of(1992, 12, 19), at);
            story.born(DemoPeople.CELESTE, LocalDate.of(2001, 7, 7), at);
            story.born(DemoPeople.DARIUS, today.minusYears(17).minusDays(120), at);
            story.born(DemoPeople.ESME, LocalDate.of(1996, 1, 25), at);
        });
        DemoStory.Course piets = new DemoStory.Course(
                DemoPeople.SAFETY_LEAD, DemoPeople.SAFETY_LEAD, DemoPeople.SAFETY_LEAD, "A countersigner from outside");
        DemoStory.Course usual =
                new DemoStory.Course(DemoPeople.INSTRUCTOR, DemoPeople.INSTRUCTOR, DemoPeople.SAFETY_LEAD, null);
        cleared(acts, now, story, DemoPeople.BASTIAN, 325, usual);
        for (int day : new int[] {260, 190, 120, 50, 12}) {
            add(acts, now, day, at -> story.handled(DemoPeople.BASTIAN, at));
        }
        cleared(acts, now, story, DemoPeople.INSTRUCTOR, 95, piets);
        add(acts, now, 33, at -> story.handled(DemoPeople.INSTRUCTOR, at));
        cleared(acts, now, story, DemoPeople.CELESTE, 62, usual);
        add(
                acts,
                now,
                4,
                at -> scribe.write(
                        DemoPeople.INSTRUCTOR,
                        at,
                        new Decision.Suspended(
                                DemoPeople.CELESTE,
                                null,
                                DemoPeople.INSTRUCTOR,
                                Trigger.NEAR_MISS,
                                scribe.note(
                                        DemoPeople.CELESTE,
                                        "Gloves off before the bottle was closed; nothing came of it.",
                                        at))));
        cleared(acts, now, story, DemoPeople.ANOUK, 41, usual);
        add(
                acts,
                now,
                45,
                at -> scribe.write(
                        DemoPeople.SAFETY_LEAD,
                        at,
                        new Evidence.AgeException(
                                DemoPeople.DARIUS,
                                DemoPeople.INSTRUCTOR,
                                story.day(now).plusDays(60),
                                DemoPeople.SAFETY_LEAD,
                                scribe.note(
                                        DemoPeople.DARIUS,
                                        "Vocational training; the school's local law as its office filed it.",
                                        at),
                                scribe.note(DemoPeople.DARIUS, "Risk assessment 7 of the demo school.", at))));
        cleared(acts, now, story, DemoPeople.DARIUS, 21, usual);
        add(acts, now, 9, at -> story.training(DemoPeople.ESME, usual, at));
        add(acts, now, 8, at -> story.sheetRead(DemoPeople.ESME, at));
        acts.stream().sorted(Comparator.comparing(Happening::at)).forEach(act -> act.what()
                .run());
    }

    private static void cleared(
            List<Happening> acts, Instant now, DemoStory story, UUID person, int daysAgo, DemoStory.Course course) {
        add(acts, now, daysAgo + 20, at -> story.training(person, course, at));
        add(acts, now, daysAgo + 10, at -> story.sitting(person, 12, at));
        add(acts, now, daysAgo + 8, at -> story.sitting(person, 11, at));
        add(acts, now, daysAgo + 7, at -> story.sheetRead(person, at));
        add(acts, now, daysAgo + 6, at -> story.equipment(person, course, at));
        add(acts, now, daysAgo + 5, at -> story.practicals(person, course, at));
        add(acts, now, daysAgo, at -> story.grant(person, course, at));
    }

    private void qualify(UUID person, Act act, UUID by, Instant at, Instant now) {
        LocalDate through = LocalDate.ofInstant(now, java.time.ZoneOffset.UTC).plusDays(400);
        scribe.write(
                by,
                at,
                new Setting.QualificationGiven(
                        person, act, through, by, scribe.note(person, "Invented for the demo school.", at)));
    }

    private static void add(List<Happening> acts, Instant now, int daysAgo, java.util.function.Consumer<Instant> what) {
        Instant at = now.minus(Duration.ofDays(daysAgo));
        acts.add(new Happening(at, () -> what.accept(at)));
    }

    static UUID id(int number) {
        return new UUID(0x0000_0000_0000_4000L, 0x8000_0000_0000_0000L + number);
    }
}
