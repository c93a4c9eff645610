package org.riseandgel.course;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.riseandgel.exercise.ExerciseLibrary;
import org.riseandgel.exercise.ExerciseTemplate;
import org.riseandgel.exercise.Problems;

/** Reads {@code lessons/checks.yaml}, and finds the rules that the exercises cannot fill. */
final class ChecksParser {
    static final String FILE = "lessons/checks.yaml";
    private static final Pattern ID = Pattern.compile("[a-z][a-z0-9-]{0,59}");
    private static final Pattern LEVEL = Pattern.compile("[1-3]");
    private static final Set<Integer> EVERY_LEVEL = Set.of(1, 2, 3);
    private static final List<String> PURPOSES = List.of(Check.CLEARANCE, Check.RECALL);
    private static final int MOST_ITEMS = 60;
    private static final Pattern DAYS = Pattern.compile("\\d{1,4}");
    private static final int FIRST_RECALL = 14;
    private static final int LAST_RECALL = 1_000;

    private final List<String> skills;
    private final ExerciseLibrary library;

    private ChecksParser(List<String> skills, ExerciseLibrary library) {
        this.skills = skills;
        this.library = library;
    }

    /** Reads the checks of a course; the skills are those of the course. */
    static List<Check> parse(String text, List<String> skills, ExerciseLibrary library, Problems problems) {
        return Fields.read(text, 0, "checks.yaml", problems)
                .map(new ChecksParser(skills, library)::checks)
                .orElse(List.of());
    }

    private List<Check> checks(Fields fields) {
        List<Check> checks = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Fields group : fields.groups("checks")) {
            checks.add(check(group, seen));
        }
        fields.noOthers();
        return checks;
    }

    private Check check(Fields fields, Set<String> seen) {
        String id = fields.text("id");
        if (!id.isEmpty() && !ID.matcher(id).matches()) {
            fields.problem("id", "is “" + id + "”, must be small letters, digits and hyphens");
        } else if (!id.isEmpty() && !seen.add(id)) {
            fields.problem("id", "“" + id + "” is here twice; every id is used once");
        }
        String title = fields.text("title");
        String about = fields.text("about");
        List<Check.Share> shares = shares(fields);
        Check.Pass pass = pass(fields, shares);
        fields.whole("per-day", 1, 1);
        int talk = fields.whole("talk-after-failed", 1, 20);
        String purpose = fields.optional("for").orElse("");
        if (!purpose.isEmpty() && !PURPOSES.contains(purpose)) {
            fields.problem(
                    "for",
                    "is “%s”, must be %s; leave it out otherwise".formatted(purpose, String.join(" or ", PURPOSES)));
        }
        List<Integer> recallDays = recallDays(fields, purpose.equals(Check.RECALL));
        fields.noOthers();
        return new Check(id, title, about, shares, pass, talk, purpose, recallDays);
    }

    private static List<Integer> recallDays(Fields fields, boolean recall) {
        if (fields.isMissing("days-after-clearance") && !recall) {
            return List.of();
        }
        List<Integer> days = new ArrayList<>();
        for (Fields.Line line : fields.texts("days-after-clearance")) {
            int day = DAYS.matcher(line.text()).matches() ? Integer.parseInt(line.text()) : 0;
            int least = days.isEmpty() ? FIRST_RECALL : days.get(days.size() - 1) + FIRST_RECALL;
            if (day < least || day > LAST_RECALL) {
                fields.problem(
                        "days-after-clearance",
                        "has “%s”, must be a whole number from %d to %d, each at least %d above the one before"
                                .formatted(line.text(), least, LAST_RECALL, FIRST_RECALL));
                return days;
            }
            days.add(day);
        }
        if (!recall) {
            fields.problem("days-after-clearance", "is only for a check with “for: recall”; leave it out");
        } else if (days.isEmpty() && !fields.isMissing("days-after-clearance")) {
            fields.problem("days-after-clearance", "is empty, must name at least one day");
        }
        return days;
    }

    private List<Check.Share> shares(Fields fields) {
        List<Check.Share> shares = new ArrayList<>();
        for (Fields group : fields.groups("skill-shares")) {
            Check.Share share = share(group);
            group.noOthers();
            if (shares.stream().anyMatch(earlier -> overlap(earlier, share))) {
                group.problem(
                        "skill",
                        "draws from the same exercises as a share above; join the two, or name different levels");
            }
            shares.add(share);
        }
        return shares;
    }

    private Check.Share share(Fields group) {
        String skill = group.text("skill");
        int count = group.whole("count", 1, MOST_ITEMS);
        int critical = group.isMissing("critical-at-least") ? 0 : group.whole("critical-at-least", 0, MOST_ITEMS);
        Check.Share share = new Check.Share(skill, levels(group), Math.max(0, count), Math.max(0, critical));
        if (!skill.isEmpty() && !skills.contains(skill)) {
            group.problem("skill", CourseParser.unknownSkill(skill, skills));
        } else if (critical > count && count > 0) {
            group.problem("critical-at-least", "is %d, but only %d items are drawn".formatted(critical, count));
        } else {
            checkPool(group, share);
        }
        return share;
    }

    private Set<Integer> levels(Fields group) {
        if (group.isMissing("level")) {
            return EVERY_LEVEL;
        }
        String level = group.text("level");
        if (!level.isEmpty() && !LEVEL.matcher(level).matches()) {
            group.problem("level", "is “%s”, must be 1, 2 or 3; leave it out to draw from all".formatted(level));
        }
        return LEVEL.matcher(level).matches() ? Set.of(Integer.parseInt(level)) : EVERY_LEVEL;
    }

    private void checkPool(Fields group, Check.Share share) {
        List<ExerciseTemplate> pool = share.pool(library);
        long critical = pool.stream().filter(ExerciseTemplate::critical).count();
        String where = where(share);
        if (share.count() > pool.size()) {
            group.problem(
                    "count",
                    "is %d, but there are only %d exercises that ask one thing in %s; write more or draw fewer"
                            .formatted(share.count(), pool.size(), where));
        }
        if (share.criticalAtLeast() > critical) {
            group.problem(
                    "critical-at-least",
                    "is %d, but only %d of the exercises in %s that ask one thing are critical; mark or write more, or ask for fewer"
                            .formatted(share.criticalAtLeast(), critical, where));
        }
    }

    private static String where(Check.Share share) {
        return share.levels().equals(EVERY_LEVEL)
                ? share.skill()
                : share.skill() + " at level " + share.levels().iterator().next();
    }

    private static boolean overlap(Check.Share one, Check.Share other) {
        Set<Integer> both = new TreeSet<>(one.levels());
        both.retainAll(other.levels());
        return one.skill().equals(other.skill()) && !both.isEmpty();
    }

    private static Check.Pass pass(Fields fields, List<Check.Share> shares) {
        Optional<Fields> group = fields.group("pass");
        if (group.isEmpty()) {
            return new Check.Pass(0, 0, 0);
        }
        Fields pass = group.get();
        int of = pass.whole("of", 1, MOST_ITEMS);
        int right = pass.whole("right", 1, MOST_ITEMS);
        int criticalWrong = pass.whole("critical-wrong", 0, MOST_ITEMS);
        pass.noOthers();
        int drawn = shares.stream().mapToInt(Check.Share::count).sum();
        if (of > 0 && of != drawn) {
            pass.problem("of", "is %d, but the shares draw %d items together; make them agree".formatted(of, drawn));
        }
        if (right > of && of > 0) {
            pass.problem("right", "is %d, must not be more than the %d items drawn".formatted(right, of));
        }
        return new Check.Pass(right, of, criticalWrong);
    }
}
