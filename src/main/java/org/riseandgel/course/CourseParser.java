package org.riseandgel.course;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.riseandgel.exercise.Problems;

/** Reads {@code lessons/course.yaml}: the stages in order, the skills, and the objectives. */
final class CourseParser {
    static final String FILE = "lessons/course.yaml";
    private static final Pattern SKILL_ID = Pattern.compile("[a-z][a-z0-9-]{0,59}");
    private static final Pattern STAGE_ID = Pattern.compile("[a-z0-9][a-z0-9-]{0,59}");

    private final Problems problems;

    private final Set<LessonKey> written;

    private CourseParser(Set<LessonKey> written, Problems problems) {
        this.written = written;
        this.problems = problems;
    }

    /** Reads the course; written are the lessons for which there is a file. */
    static Course parse(String text, Set<LessonKey> written, Problems problems) {
        return Fields.read(text, 0, "course.yaml", problems)
                .map(new CourseParser(written, problems)::course)
                .orElse(Course.EMPTY);
    }

    private Course course(Fields fields) {
        List<Fields> skillGroups = fields.groups("skills");
        List<Skill> skills = skills(skillGroups);
        List<Stage> stages = stages(fields, skills.stream().map(Skill::id).toList());
        checkStagesOfSkills(skillGroups, stages.stream().map(Stage::id).toList());
        List<Objective> objectives = objectives(fields);
        fields.noOthers();
        return new Course(stages, skills, objectives);
    }

    private List<Stage> stages(Fields fields, List<String> skills) {
        List<Stage> stages = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Fields group : fields.groups("stages")) {
            Stage stage = stage(group, stages.size() + 1, skills);
            checkId(group, stage.id(), STAGE_ID, seen);
            stages.add(stage);
        }
        return stages;
    }

    private Stage stage(Fields fields, int expected, List<String> skills) {
        String id = fields.text("id");
        int number = fields.whole("number", 1, 99);
        if (number > 0 && number != expected) {
            fields.problem(
                    "number", "is %d, must be %d: stages are numbered in their order".formatted(number, expected));
        }
        Stage stage = new Stage(
                id,
                number,
                fields.text("title"),
                fields.text("summary"),
                lessons(fields, id),
                knownSkills(fields, "gate-skills", skills, problems));
        fields.noOthers();
        return stage;
    }

    private List<String> lessons(Fields fields, String stage) {
        List<String> names = new ArrayList<>();
        for (Fields.Line line : fields.texts("lessons")) {
            if (names.contains(line.text())) {
                problems.add(line.line(), "lessons", "names “" + line.text() + "” twice; keep one");
            } else if (!written.contains(new LessonKey(stage, line.text()))) {
                String missing = "names “%s”, but there is no lessons/%s/%s.md; write it or take it off the list";
                problems.add(line.line(), "lessons", missing.formatted(line.text(), stage, line.text()));
            } else {
                names.add(line.text());
            }
        }
        return names;
    }

    /** The skills named in a list, each of which must be one of the course. */
    static List<String> knownSkills(Fields fields, String name, List<String> known, Problems problems) {
        List<String> skills = new ArrayList<>();
        for (Fields.Line line : fields.texts(name)) {
            if (known.contains(line.text())) {
                skills.add(line.text());
            } else {
                problems.add(line.line(), name, unknownSkill(line.text(), known));
            }
        }
        return skills;
    }

    static String unknownSkill(String skill, List<String> known) {
        return "names the skill “%s”, which is not in course.yaml; use one of %s"
                .formatted(skill, String.join(", ", known));
    }

    private static List<Skill> skills(List<Fields> groups) {
        List<Skill> skills = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Fields group : groups) {
            Skill skill = new Skill(group.text("id"), group.text("title"), group.text("stage"), group.text("about"));
            checkId(group, skill.id(), SKILL_ID, seen);
            group.noOthers();
            skills.add(skill);
        }
        return skills;
    }

    private static List<Objective> objectives(Fields fields) {
        List<Objective> objectives = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Fields group : fields.isMissing("objectives") ? List.<Fields>of() : fields.groups("objectives")) {
            Objective objective = new Objective(group.text("id"), group.text("title"));
            checkId(group, objective.id(), SKILL_ID, seen);
            group.noOthers();
            objectives.add(objective);
        }
        return objectives;
    }

    /** The objectives that a question names, each of which must be one of the course. */
    static List<String> knownObjectives(Fields fields, List<String> known) {
        List<String> objectives = new ArrayList<>();
        for (Fields.Line line : fields.isMissing("objectives") ? List.<Fields.Line>of() : fields.texts("objectives")) {
            if (!known.contains(line.text())) {
                fields.problem(
                        "objectives",
                        "names the objective “%s”, which is not in course.yaml; the objectives there are %s"
                                .formatted(line.text(), known.isEmpty() ? "none" : String.join(", ", known)));
            }
            objectives.add(line.text());
        }
        return objectives;
    }

    private static void checkStagesOfSkills(List<Fields> groups, List<String> stages) {
        for (Fields group : groups) {
            String stage = group.optional("stage").orElse("");
            if (!stage.isEmpty() && !stages.contains(stage)) {
                group.problem("stage", "is “" + stage + "”, must be the id of a stage above");
            }
        }
    }

    private static void checkId(Fields fields, String id, Pattern shape, Set<String> seen) {
        if (id.isEmpty()) {
            return;
        }
        if (!shape.matcher(id).matches()) {
            fields.problem("id", "is “" + id + "”, must be small letters, digits and hyphens");
        }
        if (!seen.add(id)) {
            fields.problem("id", "“" + id + "” is here twice; every id is used once");
        }
    }
}
