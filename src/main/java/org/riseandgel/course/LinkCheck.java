package org.riseandgel.course;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.exercise.Problems;

/**
 * Turns the addresses that authors write into those of our pages: {@code skill:expansion}, {@code bench:scale-batch},
 * {@code 02-expansion-and-density.md}, {@code ../05-gelling/01-the-clock.md#cold} and {@code #a-heading}. Any other is a
 * problem: a lesson has to work with the network cable out.
 */
final class LinkCheck {
    private static final Pattern LESSON =
            Pattern.compile("(?:\\.\\./([a-z0-9-]+)/)?([a-z0-9][a-z0-9-]*)\\.md(?:#([\\p{L}\\p{N}_-]+))?");

    private final Course course;
    private final Catalogue catalogue;
    private final Map<LessonKey, Lesson> lessons;

    LinkCheck(Course course, Catalogue catalogue, Map<LessonKey, Lesson> lessons) {
        this.course = course;
        this.catalogue = catalogue;
        this.lessons = lessons;
    }

    void check(LinkUse use, Lesson from, Problems problems) {
        String written = use.link().getDestination();
        Optional<String> address = address(written, from);
        if (address.isPresent()) {
            use.link().setDestination(address.get());
        } else {
            problems.add(use.line(), "link", "“" + written + "” leads nowhere; " + remedy(written));
        }
    }

    private Optional<String> address(String written, Lesson from) {
        if (written.startsWith("skill:")) {
            return course.skill(written.substring(6)).map(skill -> Addresses.practice(skill.id()));
        }
        if (written.startsWith("bench:")) {
            return catalogue.find(written.substring(6)).map(known -> Addresses.bench(known.id()));
        }
        if (written.startsWith("#")) {
            return anchor(from, written.substring(1));
        }
        Matcher lesson = LESSON.matcher(written);
        return lesson.matches() ? lesson(lesson, from) : Optional.empty();
    }

    private Optional<String> lesson(Matcher written, Lesson from) {
        String stage = written.group(1) == null ? from.key().stage() : written.group(1);
        Lesson target = lessons.get(new LessonKey(stage, written.group(2)));
        if (target == null) {
            return Optional.empty();
        }
        return written.group(3) == null
                ? Optional.of(target.key().address())
                : anchor(target, written.group(3)).map(anchor -> target.key().address() + anchor);
    }

    private static Optional<String> anchor(Lesson lesson, String name) {
        return lesson.body().headings().stream()
                .map(Heading::anchor)
                .filter(anchor -> anchor.equals(Heading.PREFIX + name))
                .map(anchor -> "#" + anchor)
                .findFirst();
    }

    private static String remedy(String written) {
        if (written.contains("://") || written.startsWith("mailto:")) {
            return "pages outside are not linked: name the source under “sources”";
        }
        return "link to skill:<skill>, bench:<calculation>, <lesson>.md or #<heading> as they are named";
    }
}
