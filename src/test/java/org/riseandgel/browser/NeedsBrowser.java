package org.riseandgel.browser;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * These tests drive a real Chromium. Without one they are skipped, loudly; where RISEANDGEL_BROWSER_REQUIRED is true they
 * run and fail instead.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(NeedsBrowser.Condition.class)
public @interface NeedsBrowser {

    final class Condition implements ExecutionCondition {
        @Override
        public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
            if (Chromium.executable().isPresent() || Chromium.required()) {
                return ConditionEvaluationResult.enabled("a browser is here, or is required");
            }
            System.err.println(
                    """

                    ************************************************************************
                    NO CHROMIUM FOUND: browser tests of %s are SKIPPED.
                    Install the package "chromium", or name a browser in RISEANDGEL_CHROMIUM.
                    ************************************************************************
                    """
                            .formatted(context.getDisplayName()));
            return ConditionEvaluationResult.disabled("no Chromium on this machine");
        }
    }
}
