package org.riseandgel.clearance.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestQuery;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.riseandgel.account.Roles;
import org.riseandgel.account.Viewer;
import org.riseandgel.clearance.Register;
import org.riseandgel.clearance.RegisterProblem;
import org.riseandgel.clearance.SettingsDesk;
import org.riseandgel.clearance.rule.Fact;
import org.riseandgel.clearance.rule.Scope;
import org.riseandgel.clearance.rule.Setting;
import org.riseandgel.platform.web.Choice;
import org.riseandgel.platform.web.Problem;

/** The suppliers' safety data sheets: revisions with their files, and who has read which. */
@Path("/register/settings/sheets")
@RolesAllowed({Roles.INSTRUCTOR, Roles.SAFETY_LEAD, Roles.OFFICE})
public class SheetsPages {
    private static final byte[] PDF = {'%', 'P', 'D', 'F', '-'};
    private static final int LARGEST = 10 * 1024 * 1024;

    private final Register register;
    private final SettingsDesk desk;
    private final EvidenceChoices choices;
    private final Viewer viewer;

    SheetsPages(Register register, SettingsDesk desk, EvidenceChoices choices, Viewer viewer) {
        this.register = register;
        this.desk = desk;
        this.choices = choices;
        this.viewer = viewer;
    }

    /** One revision with its readers. */
    public record SheetView(Setting.SdsFiled sheet, List<Integer> sections, List<Register.Reading> readings) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance sheets(
                List<SheetView> sheets,
                List<Choice> substances,
                boolean mayFile,
                Filled filled,
                String done,
                List<Problem> problems);

        private Templates() {}
    }

    @GET
    public TemplateInstance sheets(@RestQuery @DefaultValue("") String done) {
        return page(Filled.with(Map.of()), done, List.of());
    }

    @POST
    @RolesAllowed(Roles.SAFETY_LEAD)
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    public Response file(
            @RestForm @DefaultValue("") String substance,
            @RestForm @DefaultValue("") String label,
            @RestForm @DefaultValue("") String dated,
            @RestForm @DefaultValue("") String sections,
            @RestForm @DefaultValue("") String due,
            @RestForm("file") FileUpload file)
            throws IOException {
        Filled filled = Filled.with(
                Map.of("substance", substance, "label", label, "dated", dated, "sections", sections, "due", due));
        byte[] content = file == null || file.size() > LARGEST ? new byte[0] : Files.readAllBytes(file.uploadedFile());
        return Acted.then(
                "/register/settings/sheets?done=filed",
                () -> desk.fileSheet(
                        viewer.getId(),
                        new SettingsDesk.Sheet(
                                choices.substance(substance)
                                        .orElseThrow(() -> RegisterProblem.with("substance", "Choose the substance.")),
                                label,
                                filled.day("dated"),
                                file == null ? "" : file.fileName(),
                                mediaType(content),
                                content,
                                numbers(sections),
                                filled.day("due"))),
                problems -> page(filled, "", problems));
    }

    private TemplateInstance page(Filled filled, String done, List<Problem> problems) {
        List<Register.Reading> readings = register.readings();
        return Templates.sheets(
                register.sheets().stream()
                        .map(Fact::body)
                        .map(sheet -> new SheetView(
                                sheet,
                                sheet.sectionsChanged().stream().sorted().toList(),
                                readings.stream()
                                        .filter(one -> one.revision().equals(sheet.revision()))
                                        .toList()))
                        .toList(),
                EvidenceChoices.choose(register.scopes().stream()
                        .map(Scope::substance)
                        .distinct()
                        .map(one -> new Choice(EvidenceChoices.key(one), one.name() + ", " + one.supplier()))),
                viewer.isSafetyLead(),
                filled,
                done,
                problems);
    }

    /** What the file is, by its first bytes; what a browser says about it is not asked. */
    private static String mediaType(byte[] content) {
        if (content.length == 0) {
            throw RegisterProblem.with("file", "Choose the supplier's file, at most 10 MB.");
        }
        if (Arrays.equals(content, 0, Math.min(PDF.length, content.length), PDF, 0, PDF.length)) {
            return "application/pdf";
        }
        for (byte one : content) {
            if (one == 0) {
                throw RegisterProblem.with("file", "Choose a PDF or a text file.");
            }
        }
        return "text/plain";
    }

    private static Set<Integer> numbers(String sections) {
        if (!sections.isBlank() && !sections.strip().matches("[0-9]{1,2}([ ,;]+[0-9]{1,2})*")) {
            throw RegisterProblem.with("sections", "Write the numbers of the sections, such as 2, 8.");
        }
        return Arrays.stream(sections.strip().split("[ ,;]+"))
                .filter(one -> !one.isEmpty())
                .map(Integer::valueOf)
                .collect(Collectors.toSet());
    }
}
