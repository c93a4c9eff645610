package org.riseandgel.clearance.policy;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.riseandgel.clearance.ledger.EventText;
import org.riseandgel.clearance.ledger.Seal;
import org.riseandgel.clearance.rule.Checklist;
import org.riseandgel.clearance.rule.Form;
import org.riseandgel.clearance.rule.Policy;
import org.riseandgel.clearance.rule.Task;
import org.riseandgel.exercise.ContentProblem;
import org.riseandgel.exercise.Problems;
import org.riseandgel.exercise.YamlNode;
import org.riseandgel.exercise.YamlReader;

/**
 * Reads the policy and finds everything that is wrong with it. The limits of the register are checked here: a school may be
 * stricter and never laxer. Versions are the first 16 hexadecimal digits of the SHA-256 of what was read, so that
 * comments and spaces do not change them.
 */
public final class PolicyReader {
    /** Where it stands. */
    public static final String FILE = "lessons/clearance.yaml";

    private static final int VERSION_DIGITS = 16;
    private static final int DAYS = 60;

    private final Problems problems = new Problems(FILE);

    private PolicyReader() {}

    /** What was read; with problems, there is no policy. */
    public record Read(Optional<Policy> policy, List<ContentProblem> problems) {}

    /** Reads the text of the file. */
    public static Read read(String text) {
        PolicyReader reader = new PolicyReader();
        Optional<YamlNode> root = YamlReader.read(text, reader.problems);
        Optional<Policy> policy = Optional.empty();
        if (root.isPresent() && root.get() instanceof YamlNode.Mapping mapping) {
            policy = Optional.of(reader.policy(new Section(mapping, "", reader.problems)));
        } else if (reader.problems.none()) {
            reader.problems.add(1, "", "The file must be names with values, such as “periods: …”.");
        }
        return new Read(policy.filter(p -> reader.problems.none()), reader.problems.found());
    }

    private Policy policy(Section file) {
        Policy policy = new Policy(
                "",
                knowledge(file.section("knowledge")),
                periods(file.section("periods")),
                file.flag("single-instructor"),
                file.sections("equipment").stream().map(PolicyReader::equipment).toList(),
                file.sections("respirator").stream()
                        .map(PolicyReader::respirator)
                        .toList(),
                checklists(file));
        file.noOthers();
        coverage(file, policy);
        return new Policy(
                version(policy),
                policy.knowledge(),
                policy.periods(),
                policy.singleInstructor(),
                policy.ppe(),
                policy.respirator(),
                policy.checklists());
    }

    private static Policy.Knowledge knowledge(Section group) {
        int items = group.whole("items", 12, 100);
        Policy.Knowledge knowledge = new Policy.Knowledge(
                group.text("check"),
                group.whole("sittings", 2, 5),
                items,
                group.whole("right", 11, 100),
                group.whole("hours-apart", 24, 24 * 30),
                group.whole("days", 1, DAYS));
        if (knowledge.right() > items || knowledge.right() * 12 < items * 11) {
            group.problem(
                    "right",
                    "is %d of %d; it must be at least 11 of 12 and not more than there are."
                            .formatted(knowledge.right(), items));
        }
        group.noOthers();
        return knowledge;
    }

    private static Policy.Periods periods(Section group) {
        Policy.Periods periods = new Policy.Periods(
                group.whole("validity-months", 1, Policy.Limit.VALIDITY_MONTHS),
                group.whole("respirator-validity-months", 1, Policy.Limit.RESPIRATOR_MONTHS),
                group.whole("single-instructor-months", 1, Policy.Limit.SINGLE_INSTRUCTOR_MONTHS),
                group.whole("early-renewal-days", 0, Policy.Limit.EARLY_RENEWAL_DAYS),
                group.whole("observation-days", 1, Policy.Limit.EVIDENCE_DAYS),
                group.whole("equipment-days", 1, Policy.Limit.EVIDENCE_DAYS),
                group.whole("training-months", 1, 24),
                group.whole("earlier-training-months", 1, 12),
                group.whole("fit-test-months", 1, 12),
                group.whole("respirator-training-months", 1, 12),
                group.whole("separation-months", Policy.Limit.SEPARATION_MONTHS, 120),
                group.whole("delta-due-days", 1, 60),
                group.whole("idle-days", 1, 180),
                group.whole("renewal-due-days", 1, 90),
                group.whole("retention-years", 5, 40));
        group.noOthers();
        return periods;
    }

    private static Policy.Ppe equipment(Section group) {
        Form form = group.word("form", Form.class);
        Set<String> items = new HashSet<>(group.texts("items"));
        if (items.isEmpty()) {
            group.problem("items", "must name at least one item.");
        }
        group.noOthers();
        return new Policy.Ppe(form, items);
    }

    private static Policy.RespiratorNeed respirator(Section group) {
        Policy.RespiratorNeed need =
                new Policy.RespiratorNeed(group.word("form", Form.class), group.words("tasks", Task.class));
        group.noOthers();
        return need;
    }

    private static List<Checklist> checklists(Section file) {
        List<Checklist> lists = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (Section group : file.sections("checklists")) {
            Checklist list = checklist(group);
            if (!ids.add(list.id())) {
                group.problem("id", "“%s” stands here a second time.".formatted(list.id()));
            }
            lists.add(list);
        }
        return lists;
    }

    private static Checklist checklist(Section group) {
        Checklist list = new Checklist(
                group.text("id"),
                group.text("title"),
                "",
                group.words("forms", Form.class),
                group.words("tasks", Task.class),
                group.text("source"),
                steps(group));
        group.noOthers();
        return new Checklist(
                list.id(), list.title(), version(list), list.forms(), list.tasks(), list.source(), list.steps());
    }

    private static List<Checklist.Step> steps(Section group) {
        List<Checklist.Step> steps = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (Section step : group.sections("steps")) {
            steps.add(new Checklist.Step(
                    step.text("id"), step.text("text"), step.flag("critical"), step.texts("objectives")));
            if (!ids.add(steps.get(steps.size() - 1).id())) {
                step.problem("id", "stands in this list a second time.");
            }
            step.noOthers();
        }
        if (steps.stream().noneMatch(Checklist.Step::critical)) {
            group.problem("steps", "has no critical step; a practical that nobody can fail proves nothing.");
        }
        return steps;
    }

    /** Every form needs its equipment and, for every task, something to be observed: else nobody could ever be cleared. */
    private static void coverage(Section file, Policy policy) {
        for (Form form : Form.values()) {
            if (policy.ppeFor(form).isEmpty()) {
                file.problem(
                        "equipment",
                        "has nothing for the form “%s”.".formatted(form.name().toLowerCase()));
            }
            for (Task task : Task.values()) {
                if (policy.checklists().stream()
                        .noneMatch(list ->
                                list.forms().contains(form) && list.tasks().contains(task))) {
                    file.problem(
                            "checklists",
                            "has no practical for the task “%s” with the form “%s”."
                                    .formatted(
                                            task.name().toLowerCase(),
                                            form.name().toLowerCase()));
                }
            }
        }
    }

    private static String version(Object read) {
        return Seal.of(EventText.canonical(read).getBytes(java.nio.charset.StandardCharsets.UTF_8))
                .substring(0, VERSION_DIGITS);
    }
}
