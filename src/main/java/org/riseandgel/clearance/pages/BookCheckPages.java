package org.riseandgel.clearance.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.riseandgel.account.Roles;
import org.riseandgel.clearance.RegisterBook;
import org.riseandgel.clearance.ledger.Seal;
import org.riseandgel.clearance.ledger.Verification;
import org.riseandgel.platform.web.Problem;

/** Checks the book: the lines as the database holds them, or an export alone. Finds what was changed, line by line. */
@Path("/register/book/check")
@RolesAllowed({Roles.INSTRUCTOR, Roles.SAFETY_LEAD, Roles.OFFICE})
public class BookCheckPages {
    private static final int UNPROCESSABLE = 422;
    private static final int MOST_SHOWN = 100;

    private final RegisterBook book;

    BookCheckPages(RegisterBook book) {
        this.book = book;
    }

    /**
     * What a check found.
     *
     * @param title what was checked
     * @param sha256 hash of the file; empty for the book itself
     * @param more how many findings are not shown
     */
    public record ReportView(
            String title, boolean sound, int lines, String head, String sha256, List<String> findings, int more) {
        static ReportView of(String title, String sha256, Verification.Report report, List<String> others) {
            List<String> findings = new java.util.ArrayList<>(others);
            report.findings().forEach(finding -> findings.add(finding.toString()));
            return new ReportView(
                    title,
                    findings.isEmpty(),
                    report.lines(),
                    report.head(),
                    sha256,
                    findings.stream().limit(MOST_SHOWN).toList(),
                    Math.max(0, findings.size() - MOST_SHOWN));
        }
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance check(ReportView report, List<Problem> problems);

        private Templates() {}
    }

    @GET
    public TemplateInstance check() {
        return Templates.check(null, List.of());
    }

    /** Checks every line of this register and every answer that is kept for the doors. */
    @POST
    @Path("now")
    public TemplateInstance now() {
        List<String> others = book.compare().stream()
                .map(one -> "An answer kept for the doors is not what the lines say (%s).".formatted(one.task()))
                .toList();
        return Templates.check(ReportView.of("The book of this school", "", book.verify(), others), List.of());
    }

    /** Checks a file from its own bytes; nothing of it is kept. */
    @POST
    @Path("file")
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    public Response file(@RestForm FileUpload file) throws IOException {
        if (file == null || file.size() == 0) {
            return Response.status(UNPROCESSABLE)
                    .entity(Templates.check(
                            null, List.of(new Problem("file", "Choose a file that this page’s book gave out."))))
                    .build();
        }
        byte[] bytes = Files.readAllBytes(file.uploadedFile());
        return Response.ok(Templates.check(
                        ReportView.of(
                                "The file " + file.fileName(),
                                Seal.of(bytes),
                                book.verifyFile(new String(bytes, StandardCharsets.UTF_8)),
                                List.of()),
                        List.of()))
                .build();
    }
}
