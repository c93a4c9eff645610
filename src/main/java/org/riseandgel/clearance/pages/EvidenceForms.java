package org.riseandgel.clearance.pages;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.riseandgel.clearance.EvidenceDesk;
import org.riseandgel.clearance.RegisterProblem;
import org.riseandgel.clearance.rule.Form;
import org.riseandgel.clearance.rule.Means;
import org.riseandgel.clearance.rule.Substance;
import org.riseandgel.clearance.rule.Task;
import org.riseandgel.platform.school.SchoolSettings;
import org.riseandgel.platform.web.Problem;

/** Reads the forms in which evidence is written down and hands them to the desk. */
@ApplicationScoped
class EvidenceForms {
    private static final String SITTING = "SITTING:";
    private static final String YES = "yes";

    private final EvidenceDesk desk;
    private final EvidenceChoices choices;
    private final SchoolSettings settings;
    private final Clock clock;

    EvidenceForms(EvidenceDesk desk, EvidenceChoices choices, SchoolSettings settings, Clock clock) {
        this.desk = desk;
        this.choices = choices;
        this.settings = settings;
        this.clock = clock;
    }

    /** Writes one form down; what is wrong with it is thrown. */
    UUID write(UUID actor, UUID person, EvidenceKind kind, Filled form) {
        return switch (kind) {
            case TRAINING ->
                desk.training(
                        actor,
                        person,
                        form.id("trainer"),
                        substance(form),
                        moment(form, "when"),
                        form.get("topic"),
                        means(person, form));
            case EARLIER_TRAINING ->
                desk.earlierTraining(actor, person, substance(form), form.day("on"), form.get("where"));
            case EQUIPMENT ->
                desk.equipment(
                        actor,
                        person,
                        form.constant("form", Form.class)
                                .orElseThrow(() -> RegisterProblem.with("form", "Choose the form of the salt.")),
                        form.id("observer"),
                        Set.copyOf(form.all("items")),
                        moment(form, "when"),
                        means(person, form));
            case AGE -> desk.age(actor, person, form.day("born"));
            case AGE_EXCEPTION ->
                desk.ageException(
                        actor,
                        person,
                        form.id("supervisor"),
                        form.day("through"),
                        form.get("legalBasis"),
                        form.get("riskAssessment"));
            case FIT_TEST ->
                desk.fitTest(
                        actor,
                        person,
                        said(form, "passed"),
                        form.get("respirator"),
                        form.get("tester"),
                        moment(form, "when"));
            case RESPIRATOR_TRAINING ->
                desk.respiratorTraining(actor, person, form.id("trainer"), moment(form, "when"), means(person, form));
            case FIT_FOR_TASK ->
                desk.fitForTask(actor, person, said(form, "fit"), form.get("by"), moment(form, "when"));
            case HANDLED ->
                desk.handled(
                        actor,
                        person,
                        form.id("scope"),
                        form.constant("task", Task.class).orElse(null),
                        moment(form, "when"));
            case ADDITIONAL_TRAINING ->
                desk.delta(
                        actor, person, form.id("asked"), form.id("trainer"), moment(form, "when"), means(person, form));
        };
    }

    /** The moment in a field, by the school's clock; null when the field is empty. */
    Instant moment(Filled form, String field) {
        List<Problem> problems = new ArrayList<>();
        Instant read = Moment.read(field, form.get(field), settings.zone(), clock.instant(), problems)
                .instant()
                .orElse(null);
        if (!problems.isEmpty()) {
            throw new RegisterProblem(problems);
        }
        return read;
    }

    /** How understanding was verified; null when nothing was chosen. */
    Means means(UUID person, Filled form) {
        String how = form.get("how");
        boolean offered =
                choices.hows(person).stream().anyMatch(choice -> choice.value().equals(how));
        if (how.isEmpty() || !offered) {
            return null;
        }
        UUID sitting = how.startsWith(SITTING) ? UUID.fromString(how.substring(SITTING.length())) : null;
        try {
            return new Means(
                    sitting == null ? Means.How.valueOf(how) : Means.How.SITTING,
                    sitting,
                    form.get("language").strip(),
                    form.has("readingSupport", YES));
        } catch (IllegalArgumentException e) {
            throw RegisterProblem.with("language", "Write the language that was spoken or read, such as English.");
        }
    }

    private Substance substance(Filled form) {
        return choices.substance(form.get("substance"))
                .orElseThrow(() -> RegisterProblem.with("substance", "Choose the substance."));
    }

    private static boolean said(Filled form, String field) {
        if (!form.has(field, YES) && !form.has(field, "no")) {
            throw RegisterProblem.with(field, "Say yes or no.");
        }
        return form.has(field, YES);
    }
}
