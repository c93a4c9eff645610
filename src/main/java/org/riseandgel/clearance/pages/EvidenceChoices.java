package org.riseandgel.clearance.pages;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.stream.Stream;
import org.riseandgel.clearance.PersonRecord;
import org.riseandgel.clearance.Register;
import org.riseandgel.clearance.TaskWords;
import org.riseandgel.clearance.rule.Act;
import org.riseandgel.clearance.rule.DeltaKind;
import org.riseandgel.clearance.rule.Evidence;
import org.riseandgel.clearance.rule.Form;
import org.riseandgel.clearance.rule.Means;
import org.riseandgel.clearance.rule.Policy;
import org.riseandgel.clearance.rule.Scope;
import org.riseandgel.clearance.rule.Setting;
import org.riseandgel.clearance.rule.Substance;
import org.riseandgel.clearance.rule.Task;
import org.riseandgel.platform.time.SchoolTime;
import org.riseandgel.platform.web.Choice;

/** What there is to choose from where evidence is written down. */
@ApplicationScoped
class EvidenceChoices {
    private static final Choice CHOOSE = new Choice("", "Choose");
    private static final String SITTING = "SITTING:";

    private final Register register;
    private final PersonRecord records;
    private final SchoolTime time;

    EvidenceChoices(Register register, PersonRecord records, SchoolTime time) {
        this.register = register;
        this.records = records;
        this.time = time;
    }

    /** All lists that the forms about one person need. */
    public record Lists(
            List<Choice> trainers,
            List<Choice> observers,
            List<Choice> supervisors,
            List<Choice> substances,
            List<Choice> scopes,
            List<Choice> tasks,
            List<Choice> forms,
            List<Choice> hows,
            List<Choice> asked,
            List<Choice> items) {}

    Lists about(UUID person) {
        return new Lists(
                qualified(Act.TRAIN, person),
                qualified(Act.OBSERVE, person),
                supervisors(person),
                choose(register.scopes().stream()
                        .map(Scope::substance)
                        .distinct()
                        .map(one -> new Choice(key(one), one.name() + ", " + one.supplier()))),
                choose(register.scopes().stream()
                        .map(scope -> new Choice(scope.id().toString(), scope.title()))),
                choose(Arrays.stream(Task.values()).map(task -> new Choice(task.name(), TaskWords.of(task)))),
                choose(Arrays.stream(Form.values()).map(form -> new Choice(form.name(), TaskWords.of(form)))),
                hows(person),
                asked(person),
                items());
    }

    /** Those who may do something now; the first of the list is nobody. */
    List<Choice> qualified(Act act, UUID learner) {
        return choose(register.qualified().stream()
                .filter(one -> one.act() == act && !one.person().equals(learner))
                .map(one -> new Choice(one.person().toString(), one.name())));
    }

    /** How it can be seen that somebody has understood; also by each sitting on record. */
    List<Choice> hows(UUID person) {
        List<Choice> hows = new ArrayList<>();
        hows.add(CHOOSE);
        hows.add(new Choice(Means.How.DEMONSTRATION.name(), "By demonstration"));
        hows.add(new Choice(Means.How.ORAL.name(), "By word of mouth"));
        records.of(person).stream()
                .filter(line -> line.said() instanceof Evidence.SittingNoted)
                .map(line -> new Choice(
                        SITTING + ((Evidence.SittingNoted) line.said()).sitting(),
                        "By the check handed in on " + time.dateAndTime(line.effective())))
                .forEach(hows::add);
        return List.copyOf(hows);
    }

    /** The substance that was chosen; empty for none. */
    java.util.Optional<Substance> substance(String key) {
        return register.scopes().stream()
                .map(Scope::substance)
                .filter(one -> key(one).equals(key))
                .findFirst();
    }

    private List<Choice> supervisors(UUID person) {
        return choose(register.board(null, null).rows().stream()
                .filter(row -> row.standing().status() == org.riseandgel.clearance.rule.Status.CLEARED
                        && !row.person().equals(person))
                .map(row -> new Choice(row.person().toString(), row.name()))
                .distinct());
    }

    /** What an additional training can be for: what was asked of this person or of all, and changed sheets. */
    private List<Choice> asked(UUID person) {
        List<Choice> asked = new ArrayList<>();
        asked.add(new Choice("", "A long time without handling"));
        Stream.of("delta-asked", "sds-filed")
                .flatMap(kind -> records.search(null, kind, Integer.MAX_VALUE, 0).stream())
                .filter(line -> line.said() instanceof Setting.SdsFiled
                        || line.said() instanceof Setting.DeltaAsked delta
                                && (delta.person() == null || delta.person().equals(person)))
                .map(line -> new Choice(line.id().toString(), words(line)))
                .forEach(asked::add);
        return List.copyOf(asked);
    }

    private String words(PersonRecord.RecordLine line) {
        if (line.said() instanceof Setting.SdsFiled sheet) {
            return "Safety data sheet %s, %s"
                    .formatted(sheet.label(), sheet.substance().supplier());
        }
        Setting.DeltaAsked delta = (Setting.DeltaAsked) line.said();
        return "%s, asked %s: %s"
                .formatted(of(delta.kind()), time.date(line.effective()), String.join(" ", line.notes()));
    }

    /** All equipment of the policy; what only one form of the salt asks for says so. */
    private List<Choice> items() {
        List<Policy.Ppe> lists = register.policy().map(Policy::ppe).orElse(List.of());
        return lists.stream()
                .flatMap(list -> list.items().stream())
                .distinct()
                .sorted()
                .map(item -> new Choice(item, item + forWhich(item, lists)))
                .toList();
    }

    private static String forWhich(String item, List<Policy.Ppe> lists) {
        List<String> forms = lists.stream()
                .filter(list -> list.items().contains(item))
                .map(list -> TaskWords.of(list.form()).toLowerCase(Locale.ROOT))
                .toList();
        return forms.size() == lists.size() ? "" : " (%s only)".formatted(String.join(", ", forms));
    }

    static List<Choice> choose(Stream<Choice> choices) {
        return Stream.concat(Stream.of(CHOOSE), choices).toList();
    }

    static String of(DeltaKind kind) {
        return switch (kind) {
            case NEW_SDS_REVISION -> "New safety data sheet";
            case NEW_PRODUCT_GRADE -> "New grade of the product";
            case NEW_ROOM_OR_SCALE -> "New room or scale";
            case NEW_PPE -> "New protective equipment";
            case CHANGED_PROCEDURE -> "Changed procedure";
            case NOT_HANDLED -> "A long time without handling";
        };
    }

    static String key(Substance substance) {
        return String.join("|", substance.cas(), substance.supplier(), substance.name());
    }
}
