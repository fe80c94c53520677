package longrun.plan;

import longrun.plan.choice.RegulatorKind;
import longrun.plan.choice.RegulatorVent;
import longrun.plan.choice.Setting;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import longrun.quantity.Pressure;
import longrun.quantity.Ratio;

/**
 * A regulator.
 *
 * @param fedBy the section it ends, or "tank"
 * @param outlet the pressure it is set to
 * @param allowedDrop the drop its pipe may use up
 * @param droopAtCapacity how far its outlet falls at full capacity
 * @param lockUp outlet at no flow as a share of the setting
 * @param ventToOpening nearest opening whose lowest edge is below the vent
 */
public record Regulator(
        String id,
        Fact<String> name,
        Fact<RegulatorKind> kind,
        Fact<String> fedBy,
        Fact<Pressure> outlet,
        Fact<Pressure> allowedDrop,
        Fact<HeatRate> capacity,
        Fact<Pressure> capacityAtInlet,
        Fact<Pressure> droopAtCapacity,
        Fact<Ratio> lockUp,
        Fact<Pressure> minInlet,
        Fact<Pressure> lossAtLoad,
        Fact<Setting> setting,
        Fact<Distance> ventToOpening,
        Fact<Distance> ventToIntake,
        Fact<Distance> ventToIgnition,
        Fact<Distance> ventToVentTerminal,
        Fact<Boolean> underEaves,
        Fact<Boolean> shutoffBefore,
        Fact<Boolean> teeBefore,
        Fact<Boolean> teeAfter,
        Fact<Length> unionWithin,
        Fact<RegulatorVent> vent,
        Fact<Boolean> access) {}
