package longrun.ui.house.valve;

import com.vaadin.flow.dom.Element;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import longrun.draft.entry.DraftValue;
import longrun.draft.entry.NewItem;
import longrun.holdpoint.HoldPoint;
import longrun.holdpoint.HoldPoints;
import longrun.ui.field.FieldList;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;
import longrun.ui.place.Place;

/**
 * Before the valve: the test of the pipe, the points at which work stops, in order, and what the gauge shows. It never
 * says that a house is safe; it says what was recorded, by whom, and what is open.
 */
public final class ValvePlace implements Place {

    private static final String POINTS = "/holdPoints";

    private final HousePage desk;
    private final FieldList fields = new FieldList();
    private final Map<HoldPoint, PointBlock> blocks = new EnumMap<>(HoldPoint.class);
    private final TestPart test = new TestPart();
    private final ReadingsPane readings;
    private final MeasuredTable measured;
    private final Element count = Dom.text("p", "lede", "").setAttribute("role", "status");
    private final Element element;

    public ValvePlace(HousePage desk) {
        this.desk = desk;
        readings = new ReadingsPane(desk);
        measured = new MeasuredTable(readings::add);
        Element list = Dom.el("ol", "points");
        for (HoldPoint p : HoldPoint.values()) {
            PointBlock block = new PointBlock(desk, fields, p, () -> record(p));
            blocks.put(p, block);
            list.appendChild(block.element());
        }
        element = Dom.el(
                "div",
                "place-body valve",
                test.element(),
                Dom.el("section", "part", Dom.text("h3", "", "Hold points"), count, list),
                Dom.el(
                        "section",
                        "part",
                        Dom.text("h3", "", "Pressures to measure"),
                        Dom.text(
                                "p",
                                "lede",
                                "With a gauge on the test tap, beside what the plan predicts. Where they differ, the"
                                        + " reading says what to look at."),
                        measured.element()),
                readings.element());
    }

    @Override
    public Element element() {
        return element;
    }

    /** Begins the record of a point and puts the cursor in it. */
    public void record(HoldPoint point) {
        int index = desk.session().add(POINTS, NewItem.of("point", point.written()));
        fields.focus(POINTS + "/" + index + "/done");
    }

    @Override
    public void show(boolean write) {
        Optional<HoldPoints> all = desk.session().review().map(HoldPoints::of);
        boolean[] fresh = {false};
        all.ifPresent(now -> {
            Optional<HoldPoint> next = now.next().map(HoldPoints.State::point);
            for (HoldPoints.State s : now.points()) {
                PointBlock block = blocks.get(s.point());
                if (block != null) {
                    fresh[0] |= block.show(
                            s,
                            recordOf(s.point()),
                            next.filter(s.point()::equals).isPresent());
                }
            }
            test.show(now.tests(), desk.units());
            measured.show(now.pressures(), desk.units());
        });
        Dom.retext(
                count,
                all.map(a -> a.done() + " of " + a.points().size() + " recorded as done."
                                + a.next()
                                        .map(n ->
                                                " Next: " + n.point().title().toLowerCase(java.util.Locale.ROOT) + ".")
                                        .orElse(" What is written here is what was recorded; whoever signs answers for"
                                                + " it."))
                        .orElse("Not known: the house can\u2019t be worked out at the moment."));
        fields.show(write || fresh[0]);
        readings.show(write);
    }

    /** Pointer of what is recorded of a point, the last where there are several; empty where nothing is. */
    private String recordOf(HoldPoint point) {
        DraftValue all = desk.session().at(POINTS);
        for (int i = all.size() - 1; i >= 0; i--) {
            if (all.get(i).textOf("point").equals(point.written())) {
                return POINTS + "/" + i;
            }
        }
        return "";
    }

    @Override
    public void focus(String pointer) {
        if (pointer.startsWith(ReadingsPane.READINGS)) {
            readings.focus(pointer);
        } else {
            fields.focus(pointer);
        }
    }

    @Override
    public Map<String, String> heard() {
        Map<String, String> heard = new HashMap<>(fields.heard());
        heard.putAll(readings.heard());
        return heard;
    }
}
