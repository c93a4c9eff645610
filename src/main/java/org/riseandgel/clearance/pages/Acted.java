package org.riseandgel.clearance.pages;

import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.function.Function;
import org.riseandgel.clearance.RegisterDenied;
import org.riseandgel.clearance.RegisterProblem;
import org.riseandgel.platform.web.Problem;
import org.riseandgel.platform.web.SeeOther;

/** Does something and sends the browser on, or shows the page again with what is wrong. */
final class Acted {
    private static final int UNPROCESSABLE = 422;

    private Acted() {}

    /** What is not this person's to do is not found, as everywhere. */
    static Response then(String page, Runnable act, Function<List<Problem>, TemplateInstance> again) {
        try {
            act.run();
            return SeeOther.page(page);
        } catch (RegisterProblem e) {
            return Response.status(UNPROCESSABLE)
                    .entity(again.apply(e.problems()))
                    .build();
        } catch (RegisterDenied e) {
            throw new NotFoundException(e);
        }
    }
}
