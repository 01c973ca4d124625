package batchwright.report.html.chart;

import batchwright.report.cooking.KitchenClock;
import batchwright.report.html.chart.Svg.Anchor;
import batchwright.schedule.OvenSetting;
import batchwright.schedule.PlacedStep;
import batchwright.schedule.Schedule;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * A session from top to bottom: at the left the time and the cook's hands with what to do, at the right a lane for each burner and
 * shelf. Every minute is as long as every other. It runs downwards because phones scroll that way.
 */
public final class TimeLineChart {
    private static final double UNITS_PER_MINUTE = 3.5;
    private static final int TICK_MINUTES = 15;
    private static final double TOP = 40;
    private static final double HANDS = 38;
    private static final double HANDS_WIDTH = 14;
    private static final double TAGS = HANDS + HANDS_WIDTH + 6;
    private static final double WORDS = TAGS + 25;
    private static final double LANE = 25;
    private static final double BAR = 23;
    private static final double HEAT = 38;
    private static final double LETTERING = 12.5;
    private static final double LETTER = 5.7;
    private static final int MOST_LINES = 3;

    private final Schedule schedule;
    private final KitchenClock clock;
    private final Function<PlacedStep, String> tag;
    private final Function<PlacedStep, String> look;
    private final List<Lane> lanes;
    private final double lanesFrom;

    /**
     * @param tag by which a step is called in the picture
     * @param look a class of the style sheet
     */
    public TimeLineChart(
            Schedule schedule,
            KitchenClock clock,
            Function<PlacedStep, String> tag,
            Function<PlacedStep, String> look) {
        this.schedule = schedule;
        this.clock = clock;
        this.tag = tag;
        this.look = look;
        this.lanes = Lane.of(schedule);
        this.lanesFrom = Svg.WIDTH - LANE * lanes.size() - (schedule.settings().isEmpty() ? 0 : HEAT);
    }

    public Svg draw(String says) {
        List<Label> labels = labels();
        double below = labels.get(labels.size() - 1).y + LETTERING;
        double bottom = y(schedule.minutes());
        Svg svg = new Svg(Math.max(bottom + 8, below), says);
        heads(svg);
        times(svg, bottom);
        labels.forEach(label -> draw(svg, label));
        schedule.steps().stream().filter(s -> s.handsOnMinutes() > 0).forEach(step -> hands(svg, step));
        for (int i = 0; i < lanes.size(); i++) {
            double x = laneX(i);
            lanes.get(i).steps().forEach(step -> bar(svg, step, x));
        }
        schedule.settings().forEach(setting -> heat(svg, setting));
        return svg;
    }

    private void heads(Svg svg) {
        svg.text(HANDS, TOP - 8, Anchor.START, "small", "hands");
        String before = "";
        for (int i = 0; i < lanes.size(); i++) {
            Lane lane = lanes.get(i);
            boolean isAside = lane.name().equals(Lane.ASIDE);
            if (!isAside && !lane.name().equals(before)) {
                svg.text(laneX(i) + 1, TOP - 24, Anchor.START, "small", lane.name());
            }
            before = lane.name();
            String head = isAside ? lane.name() : Integer.toString(lane.number());
            svg.text(laneX(i) + BAR / 2, TOP - 8, Anchor.MIDDLE, "small", head);
            svg.line(laneX(i) + BAR / 2, TOP, laneX(i) + BAR / 2, y(schedule.minutes()), "grid");
        }
        if (!schedule.settings().isEmpty()) {
            svg.text(Svg.WIDTH, TOP - 24, Anchor.END, "small", "oven");
        }
    }

    private void times(Svg svg, double bottom) {
        int minutes = schedule.minutes();
        for (int minute = 0; minute <= minutes; minute += TICK_MINUTES) {
            svg.line(HANDS - 4, y(minute), HANDS, y(minute), "axis");
            svg.line(lanesFrom, y(minute), lanesFrom + LANE * lanes.size(), y(minute), "grid");
            if (minutes - minute > TICK_MINUTES / 3) {
                svg.text(HANDS - 7, y(minute) + 4, Anchor.END, "small", clock.text(minute));
            }
        }
        svg.line(HANDS - 4, bottom, lanesFrom + LANE * lanes.size(), bottom, "axis");
        svg.text(HANDS - 7, bottom + 4, Anchor.END, "value", clock.text(minutes));
        svg.line(HANDS, TOP, HANDS, bottom, "axis");
    }

    /** @param y of the first line of words */
    private record Label(PlacedStep step, double y, int lines) {}

    /** Each at its start, or below the one before it; as many lines as there is room for. */
    private List<Label> labels() {
        List<PlacedStep> steps = schedule.steps();
        List<Double> places = new ArrayList<>();
        double free = 0;
        for (PlacedStep step : steps) {
            double at = Math.max(y(step.start()) + LETTERING - 2, free);
            places.add(at);
            free = at + LETTERING;
        }
        List<Label> labels = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            double room = i + 1 < steps.size() ? places.get(i + 1) - places.get(i) : LETTERING;
            labels.add(new Label(steps.get(i), places.get(i), (int)
                    Math.min(MOST_LINES, Math.max(1, Math.floor(room / LETTERING)))));
        }
        return labels.stream().sorted(Comparator.comparingDouble(Label::y)).toList();
    }

    private void draw(Svg svg, Label label) {
        double from = HANDS + (label.step.handsOnMinutes() > 0 ? HANDS_WIDTH : 0);
        svg.line(from, y(label.step.start()), TAGS - 2, label.y - 4, "lead");
        svg.text(TAGS, label.y, Anchor.START, "tag", tag.apply(label.step));
        List<String> words = FirstWords.of(label.step.text(), (int) ((lanesFrom - 6 - WORDS) / LETTER), label.lines);
        for (int i = 0; i < words.size(); i++) {
            svg.text(WORDS, label.y + LETTERING * i, Anchor.START, "rowname words", words.get(i));
        }
    }

    private void hands(Svg svg, PlacedStep step) {
        double height = y(step.handsOnUntil()) - y(step.start());
        svg.rectangle(HANDS, y(step.start()), HANDS_WIDTH, height, "part hands " + look.apply(step));
    }

    private void bar(Svg svg, PlacedStep step, double x) {
        double height = y(step.end()) - y(step.start());
        svg.rectangle(x, y(step.start()), BAR, height, "part " + look.apply(step));
        svg.text(
                x + BAR / 2,
                y(step.start()) + Math.min(height / 2 + 4, LETTERING),
                Anchor.MIDDLE,
                "on",
                tag.apply(step));
    }

    private void heat(Svg svg, OvenSetting setting) {
        double y = y(setting.minute());
        double right = lanesFrom + LANE * lanes.size();
        double left = right
                - LANE * lanes.stream().filter(l -> l.name().equals(Lane.SHELF)).count();
        svg.line(left, y, Svg.WIDTH, y, "heat");
        svg.text(Svg.WIDTH, y + LETTERING, Anchor.END, "value", setting.celsius() + " °C");
    }

    private double laneX(int lane) {
        return lanesFrom + LANE * lane + (LANE - BAR) / 2;
    }

    private static double y(int minute) {
        return TOP + minute * UNITS_PER_MINUTE;
    }
}
