package longrun.review.json;

import longrun.origin.Figure;
import longrun.tank.Demand;
import longrun.tank.TankReport;

/** Writes the tank of a review. */
final class TankJson {

    private TankJson() {}

    static void write(TankReport tank, ReviewObject out) {
        figure(out, "usableGal", tank.usableGal());
        figure(out, "usableGaugeLowGal", tank.usableGaugeLowGal());
        figure(out, "capacityAtDesignBtuh", tank.capacityAtDesignBtuh());
        figure(out, "capacityAt20PsigBtuh", tank.plannedBtuh());
        figure(out, "leastPsi", tank.leastPsig());
        figure(out, "keptPsi", tank.keptPsig());
        figure(out, "boilingF", tank.boilingF());
        ReviewObject.Items demands = out.list("demands");
        tank.demands().forEach(d -> demand(demands.add(), d));
        ReviewObject.Items curve = out.list("curve");
        tank.curve().forEach(point -> {
            ReviewObject item = curve.add();
            item.number("airF", point.airF(), () -> tank.capacityAtDesignBtuh().origin());
            item.number(
                    "capacityBtuh",
                    point.capacityBtuh(),
                    () -> tank.capacityAtDesignBtuh().origin());
        });
    }

    private static void demand(ReviewObject out, Demand demand) {
        out.text("name", demand.name());
        figure(out, "btuh", demand.btuh());
        out.text("status", demand.status().written());
        if (demand.status() != Demand.Status.UNKNOWN) {
            figure(out, "holdMinutes", demand.holdMinutes());
            out.bool("withoutEnd", demand.withoutEnd());
        }
        if (!demand.takes().isEmpty()) {
            ReviewObject.Items takes = out.list("takes");
            demand.takes().forEach(takes::add);
        }
    }

    static void figure(ReviewObject out, String field, Figure figure) {
        out.number(field, figure.value(), figure::origin);
    }
}
