package org.riseandgel.clearance.paper;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestPath;
import org.riseandgel.clearance.Register;
import org.riseandgel.clearance.TaskWords;
import org.riseandgel.clearance.rule.Checklist;
import org.riseandgel.clearance.rule.Policy;
import org.riseandgel.clearance.rule.Scope;
import org.riseandgel.clearance.rule.Setting;
import org.riseandgel.clearance.rule.Substance;

/**
 * Blank forms to print. They hold nothing about anybody, so everybody who is signed in may see them: whoever is going to be
 * watched may know what for.
 */
@Path("/register/paper")
@Authenticated
public class PaperPages {
    private final Register register;
    private final Clock clock;

    PaperPages(Register register, Clock clock) {
        this.register = register;
        this.clock = clock;
    }

    /** The equipment that has to be shown for a form of the salt. */
    public record Equipment(String form, List<String> items) {}

    /** A sheet that is to be read. */
    public record SheetLine(String substance, String label) {}

    /** A scope to tick, with what it is for. */
    public record ScopeLine(String title, String what) {
        static ScopeLine of(Scope scope) {
            String tasks = scope.tasks().stream()
                    .map(task -> TaskWords.of(task).toLowerCase(Locale.ROOT))
                    .collect(Collectors.joining(", "));
            return new ScopeLine(
                    scope.title(), "%s, %s: %s".formatted(TaskWords.of(scope.form()), scope.room(), tasks));
        }
    }

    /** What stands printed on a form already. */
    public record Printed(
            Instant at,
            String policy,
            List<ScopeLine> scopes,
            List<Equipment> equipment,
            List<SheetLine> sheets,
            List<String> substances) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance forms(List<Checklist> practicals, List<PaperForm> forms);

        static native TemplateInstance practical(Checklist practical, Printed printed);

        static native TemplateInstance form(PaperForm form, Printed printed);

        private Templates() {}
    }

    @GET
    public TemplateInstance forms() {
        return Templates.forms(register.policy().map(Policy::checklists).orElse(List.of()), PaperForm.all());
    }

    @GET
    @Path("practicals/{checklist}")
    public TemplateInstance practical(@RestPath String checklist) {
        Checklist found =
                register.policy().flatMap(policy -> policy.checklist(checklist)).orElseThrow(NotFoundException::new);
        return Templates.practical(
                found, printed(register.scopes().stream().filter(found::isFor).toList()));
    }

    @GET
    @Path("{form}")
    public TemplateInstance form(@RestPath String form) {
        return Templates.form(PaperForm.find(form).orElseThrow(NotFoundException::new), printed(register.scopes()));
    }

    private Printed printed(List<Scope> scopes) {
        List<Substance> substances =
                scopes.stream().map(Scope::substance).distinct().toList();
        return new Printed(
                clock.instant(),
                register.policy().map(Policy::version).orElse("none in force"),
                scopes.stream().map(ScopeLine::of).toList(),
                register.policy().stream()
                        .flatMap(policy -> policy.ppe().stream())
                        .map(ppe -> new Equipment(
                                TaskWords.of(ppe.form()),
                                ppe.items().stream().sorted().toList()))
                        .toList(),
                substances.stream()
                        .flatMap(one -> register.sheet(one).stream())
                        .map(PaperPages::line)
                        .toList(),
                substances.stream().map(PaperPages::words).toList());
    }

    private static SheetLine line(Setting.SdsFiled sheet) {
        return new SheetLine(words(sheet.substance()), sheet.label());
    }

    private static String words(Substance substance) {
        return "%s, CAS %s, from %s".formatted(substance.name(), substance.cas(), substance.supplier());
    }
}
