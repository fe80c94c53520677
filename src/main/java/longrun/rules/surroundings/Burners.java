package longrun.rules.surroundings;

import java.util.ArrayList;
import java.util.List;
import longrun.plan.Appliance;
import longrun.plan.Plan;
import longrun.plan.Room;
import longrun.plan.choice.ApplianceVent;

/**
 * The burners that take their air from a room, summed: direct-vent ones take none (CA-05).
 *
 * @param naturalBtuh inputs of those without a fan
 * @param fanBtuh inputs of the fan-assisted ones
 * @param noInput JSON pointers of inputs not entered
 * @param noVent JSON pointers of vents not entered; counted among the natural ones
 */
record Burners(double naturalBtuh, double fanBtuh, List<String> noInput, List<String> noVent, int count) {

    static final Burners NONE = new Burners(0, 0, List.of(), List.of(), 0);

    /**
     * @param doubtful whether an appliance whose vent is not entered counts
     */
    static Burners in(Plan plan, Room room, boolean doubtful) {
        double natural = 0;
        double fan = 0;
        int count = 0;
        List<String> noInput = new ArrayList<>();
        List<String> noVent = new ArrayList<>();
        for (int i = 0; i < plan.appliances().size(); i++) {
            Appliance a = plan.appliances().get(i);
            if (!a.room().is(room.id())
                    || a.vent().is(ApplianceVent.DIRECT)
                    || (a.vent().isUnknown() && !doubtful)) {
                continue;
            }
            count++;
            if (a.vent().isUnknown()) {
                noVent.add("/appliances/" + i + "/vent");
            }
            if (!a.input().isKnown()) {
                noInput.add("/appliances/" + i + "/input");
            }
            double btuh = a.input().findValue().map(h -> h.btuh()).orElse(0.0);
            if (a.vent().is(ApplianceVent.FAN)) {
                fan += btuh;
            } else {
                natural += btuh;
            }
        }
        return new Burners(natural, fan, List.copyOf(noInput), List.copyOf(noVent), count);
    }

    double btuh() {
        return naturalBtuh + fanBtuh;
    }

    Burners plus(Burners other) {
        List<String> inputs = new ArrayList<>(noInput);
        inputs.addAll(other.noInput);
        List<String> vents = new ArrayList<>(noVent);
        vents.addAll(other.noVent);
        return new Burners(
                naturalBtuh + other.naturalBtuh, fanBtuh + other.fanBtuh, inputs, vents, count + other.count);
    }
}
