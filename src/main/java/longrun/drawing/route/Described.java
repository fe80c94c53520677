package longrun.drawing.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import longrun.piping.Outlet;
import longrun.plan.choice.Setting;

/** The drawing in words, for those who do not see it. */
final class Described {

    private static final int MOST = 12;

    private final RouteModel model;
    private final DrawingUnits units;

    Described(RouteModel model, DrawingUnits units) {
        this.model = model;
        this.units = units;
    }

    String words() {
        List<String> said = new ArrayList<>();
        for (RouteModel.Tree tree : model.trees()) {
            if (tree.regulator() >= 0) {
                said.add((tree.atTank() ? "from the tank through " : "from ")
                        + String.join(", ", model.regulatorWords(tree.regulator())));
            }
            for (int r : tree.runs()) {
                if (said.size() < MOST) {
                    said.add(run(model.runs().get(r)));
                }
            }
        }
        int more = model.runs().size() + model.trees().size() - said.size();
        return "The pipe route drawn in isometric, directions true, lengths not to scale: " + String.join("; ", said)
                + (more > 0 ? "; and " + more + " more" : "") + ".";
    }

    private String run(Run run) {
        StringBuilder s = new StringBuilder("section ").append(run.id());
        run.setting().ifPresent(w -> s.append(' ').append(w == Setting.UNDERGROUND ? "buried" : w.written()));
        s.append(", size ").append(run.size()).append(", ");
        List<String> legs = new ArrayList<>();
        for (Run.Leg leg : run.legs()) {
            legs.add(leg.way().map(d -> d.name().toLowerCase(Locale.ROOT) + " ").orElse("")
                    + (leg.known() ? units.length(leg.feet()) : "length not known"));
        }
        s.append(String.join(", ", legs));
        if (run.isAt(Outlet.Kind.APPLIANCE)) {
            s.append(", to the ").append(run.endName());
        } else if (run.isAt(Outlet.Kind.REGULATOR)) {
            s.append(", to regulator ").append(run.end().map(Outlet::id).orElse(""));
        } else if (run.end().isPresent()) {
            s.append(", ").append(run.endName());
        } else {
            s.append(", to a branch");
        }
        return s.toString();
    }
}
