package org.riseandgel.bench;

import static org.riseandgel.core.quantity.Unit.MINUTE;
import static org.riseandgel.core.quantity.Unit.ONE;

import java.util.List;
import org.riseandgel.core.gel.GelForecast;
import org.riseandgel.core.gel.WorkPlan;
import org.riseandgel.core.quantity.TimeSpan;

/** The work as bars over the minutes after the agent is added, and behind them the time in which the foam gels. */
final class GelTimeLine {
    private static final double WIDTH = 600;
    private static final double HEIGHT = 250;
    private static final double LEFT = 84;
    private static final double RIGHT = 580;
    private static final double TOP = 40;
    private static final double FLOOR = 206;
    private static final double ROW = 38;
    private static final double BAR = 24;
    private static final double SPARE = 1.05;

    private final WorkPlan plan;
    private final GelForecast forecast;
    private final QuantityText text;
    private final double end;

    GelTimeLine(WorkPlan plan, GelForecast forecast, QuantityText text) {
        this.plan = plan;
        this.forecast = forecast;
        this.text = text;
        end = SPARE * Math.max(forecast.high().inMinutes(), plan.closed().inMinutes());
    }

    String svg() {
        Svg svg = Svg.picture("gel-clock", "", WIDTH, HEIGHT, "The work and the gel on one time line", description());
        double early = x(forecast.low());
        svg.rectangle("f-foam", early, TOP, x(forecast.high()) - early, FLOOR - TOP);
        svg.line("f-dash", x(forecast.median()), TOP, x(forecast.median()), FLOOR);
        List<WorkPlan.Step> steps = List.of(plan.disperse(), plan.refine(), plan.fill(), plan.close());
        for (int row = 0; row < steps.size(); row++) {
            bar(svg, row, RunGelClock.STEPS.get(row).title(), steps.get(row));
        }
        svg.line("f-accent", early, TOP - 10, early, FLOOR);
        svg.words("f-text-strong", 14, early + 4, TOP - 14, "closed by " + written(forecast.low()));
        axis(svg);
        return svg.closed();
    }

    private void bar(Svg svg, int row, String name, WorkPlan.Step step) {
        double y = TOP + 8 + row * ROW;
        svg.words("f-text", 14, 4, y + BAR * 0.7, name);
        svg.rectangle("f-metal", x(step.start()), y, x(step.end()) - x(step.start()), BAR);
        svg.path(
                "f-thin", true, x(step.start()), y, x(step.end()), y, x(step.end()), y + BAR, x(step.start()), y + BAR);
    }

    private void axis(Svg svg) {
        svg.line("f-line", LEFT, FLOOR, RIGHT, FLOOR);
        Ticks.of(0, end).figures().forEach(minutes -> {
            double x = x(TimeSpan.ofMinutes(minutes));
            svg.line("f-thin", x, FLOOR, x, FLOOR + 6);
            svg.words("f-text", 14, x - 4, FLOOR + 22, text.of(minutes, ONE));
        });
        svg.words("f-text", 14, LEFT, HEIGHT - 4, "minutes after the gelling agent is added");
    }

    private String description() {
        return "The mold is closed after %s. The foam gels from %s to %s, half of such batches by %s."
                .formatted(
                        written(plan.closed()),
                        written(forecast.low()),
                        written(forecast.high()),
                        written(forecast.median()));
    }

    private String written(TimeSpan time) {
        return text.toReadability(time, MINUTE, 0.1);
    }

    private double x(TimeSpan time) {
        return LEFT + (RIGHT - LEFT) * time.inMinutes() / end;
    }
}
