package longrun.pressure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import longrun.capacity.FlowEquation;
import longrun.capacity.GasProperties;
import longrun.piping.Piping;
import longrun.piping.Stage;
import longrun.plan.Appliance;
import longrun.plan.Fact;
import longrun.plan.Leg;
import longrun.plan.Regulator;
import longrun.plan.choice.Direction;
import longrun.pressure.RegulatorPressure.Reached;
import longrun.quantity.HeatRate;
import longrun.quantity.Pressure;
import longrun.quantity.Ratio;
import longrun.quantity.Same;
import longrun.sizing.Sizing;

/**
 * The pressure along every run and at every appliance of a sized plan. Every regulator begins anew at its own setting.
 * Worked in time proportional to the number of sections, without recursion.
 */
public final class Pressures {

    /** What propane loses a foot of rise, in. w.c.: specific gravity 1.50 against air (derived). */
    public static final double STATIC_IN_WC_PER_FT = 0.0073;

    /** Outlet at no flow as a share of the setting where it is not entered (memory). */
    public static final double LOCK_UP_SHARE = 1.20;

    private final Sizing sizing;
    private final Piping piping;
    private final StageChain chain;
    private final double[] aloneInWc;
    private final double[] riseInWc;
    private final RegulatorPressure[] regulators;
    private final List<OutletPressure> outlets;

    private Pressures(Sizing sizing) {
        this.sizing = sizing;
        this.piping = sizing.piping();
        this.chain = new StageChain(sizing);
        this.aloneInWc = new double[piping.sectionCount()];
        Arrays.fill(aloneInWc, Double.NaN);
        this.riseInWc = new double[piping.sectionCount()];
        this.regulators = new RegulatorPressure[piping.stages().size()];
        AloneChain alone = new AloneChain(piping, chain.flow, aloneInWc);
        for (int stage : upstreamFirst()) {
            work(piping.stages().get(stage), alone);
        }
        List<OutletPressure> out = new ArrayList<>();
        for (Appliance appliance : piping.plan().appliances()) {
            out.add(outlet(appliance));
        }
        this.outlets = List.copyOf(out);
    }

    public static Pressures of(Sizing sizing) {
        return new Pressures(sizing);
    }

    /** Stages, each after the one that feeds its regulator. */
    private List<Integer> upstreamFirst() {
        List<List<Integer>> fed = new ArrayList<>();
        List<Integer> order = new ArrayList<>();
        for (int r = 0; r < regulators.length; r++) {
            fed.add(new ArrayList<>());
        }
        for (int r = 0; r < regulators.length; r++) {
            int feeder = piping.stageFeeding(r);
            (feeder < 0 ? order : fed.get(feeder)).add(r);
        }
        for (int k = 0; k < order.size(); k++) {
            order.addAll(fed.get(order.get(k)));
        }
        return order;
    }

    private void work(Stage stage, AloneChain alone) {
        Regulator regulator = stage.regulator();
        Optional<Pressure> setting = regulator.outlet().findValue();
        Optional<Droop> droop = setting.map(p -> Droop.of(piping.plan(), regulator, p, piping.load(stage)));
        double lockUp = regulator.lockUp().findValue().map(Pressures::lockUp).orElse(LOCK_UP_SHARE);
        int feeder = piping.sectionFeeding(stage.regulatorIndex());
        Optional<Pressure> inlet = feeder < 0 ? Optional.empty() : known(chain.droopedEndInWc[feeder]);
        regulators[stage.regulatorIndex()] = new RegulatorPressure(
                regulator,
                inlet,
                reached(regulator, inlet, feeder),
                setting,
                setting.map(p -> Pressure.ofInWc(p.inWc() * lockUp)),
                regulator.lockUp().isKnown(),
                droop,
                piping.load(stage));
        for (int s : stage.sections()) {
            int parent = piping.parent(s);
            riseInWc[s] = (parent < 0 ? 0 : riseInWc[parent])
                    + staticLoss(s).map(Pressure::inWc).orElse(Double.NaN);
        }
        if (setting.isPresent()) {
            chain.run(
                    stage,
                    setting.get(),
                    droop.orElseThrow().atLoad().map(Pressure::inWc).orElse(Double.NaN));
            alone.run(stage, setting.get());
        }
    }

    /** A share under 100 % can only be meant as what lock-up adds: no regulator at rest is under its setting. */
    private static double lockUp(Ratio entered) {
        return entered.fraction() < 1 ? 1 + entered.fraction() : entered.fraction();
    }

    private Reached reached(Regulator regulator, Optional<Pressure> inlet, int feeder) {
        if (feeder < 0) {
            return regulator.fedBy().isKnown() ? Reached.YES : Reached.UNKNOWN;
        }
        int stage = piping.stageIndex(feeder);
        Reached before = stage < 0 || !piping.isComplete(stage) ? Reached.UNKNOWN : regulators[stage].reached();
        Optional<Pressure> least = regulator.minInlet().findValue();
        // no regulator raises pressure: under its own setting it is not reached, whatever its maker asks
        Optional<Pressure> needed =
                least.isPresent() ? least : regulator.outlet().findValue();
        boolean under = inlet.isPresent()
                && (inlet.get().inWc() <= 0
                        || needed.isPresent()
                                && !Same.atLeast(
                                        inlet.get().inWc(), needed.get().inWc()));
        boolean starvedBefore = stage >= 0 && regulators[stage].reached() == Reached.NO;
        if (starvedBefore || under) {
            return Reached.NO;
        }
        return before == Reached.UNKNOWN || inlet.isEmpty() ? Reached.UNKNOWN : Reached.YES;
    }

    private OutletPressure outlet(Appliance appliance) {
        ConnectorDrop connector = ConnectorDrop.of(appliance);
        OptionalInt found = piping.findSection(appliance.fedBy().findValue().orElse(""));
        int section = found.orElse(-1);
        int stage = section < 0 ? -1 : piping.stageIndex(section);
        if (stage < 0) {
            Optional<Pressure> none = Optional.empty();
            return new OutletPressure(section, -1, none, none, none, none, none, none, connector, InletStatus.UNKNOWN);
        }
        RegulatorPressure regulator = regulators[stage];
        double drooped = chain.droopedEndInWc[section];
        Optional<Pressure> atInlet =
                known(StageChain.after(drooped, connector.drop().inWc()));
        return new OutletPressure(
                section,
                stage,
                known(chain.endInWc[section]),
                known(drooped),
                atInlet,
                known(aloneInWc[section]),
                regulator.lockUp(),
                known(riseInWc[section]),
                connector,
                status(appliance, regulator, stage, atInlet));
    }

    private InletStatus status(
            Appliance appliance, RegulatorPressure regulator, int stage, Optional<Pressure> atInlet) {
        Fact<Pressure> least = appliance.minInlet();
        Fact<Pressure> greatest = appliance.maxInlet();
        boolean low = atInlet.isPresent()
                && (atInlet.get().inWc() <= 0
                        || least.is(p -> !Same.atLeast(atInlet.get().inWc(), p.inWc())));
        if (low || regulator.reached() == Reached.NO) {
            return InletStatus.LOW;
        }
        Optional<Pressure> idle = regulator.lockUp();
        if (idle.isPresent() && greatest.is(p -> !Same.atMost(idle.get().inWc(), p.inWc()))) {
            return InletStatus.HIGH;
        }
        boolean known = least.isKnown()
                && LinePressure.isBelieved(appliance)
                && atInlet.isPresent()
                && idle.isPresent()
                && regulator.reached() == Reached.YES
                && piping.isComplete(stage);
        return known ? InletStatus.ENOUGH : InletStatus.UNKNOWN;
    }

    public Sizing sizing() {
        return sizing;
    }

    /** One section, by its index in the plan. */
    public SectionPressure section(int index) {
        double drop = chain.dropInWc[index];
        SectionFlow flow = chain.flow[index];
        return new SectionPressure(
                Double.isInfinite(drop) ? Optional.empty() : known(drop),
                known(chain.endInWc[index]),
                known(chain.droopedEndInWc[index]),
                velocity(index),
                flow.hasBore() && piping.measured(index).isPresent()
                        ? OptionalDouble.of(
                                areaFt2(flow) * piping.measured(index).get().feet())
                        : OptionalDouble.empty(),
                staticLoss(index),
                sizing.counted(index));
    }

    /** Actual feet a second at the section's end, where the gas is thinnest and fastest. */
    private OptionalDouble velocity(int index) {
        SectionFlow flow = chain.flow[index];
        Optional<HeatRate> load = piping.load(index).whole();
        double end = chain.endInWc[index];
        if (!flow.hasBore() || load.isEmpty() || Double.isNaN(end) || end <= 0) {
            return OptionalDouble.empty();
        }
        double standard = load.get().btuh() / GasProperties.PROPANE.btuPerFt3() / 3600;
        double psia = Pressure.ofInWc(end).psi() + FlowEquation.ATMOSPHERE_PSIA;
        return OptionalDouble.of(standard * FlowEquation.ATMOSPHERE_PSIA / psia / areaFt2(flow));
    }

    private static double areaFt2(SectionFlow flow) {
        return Math.PI / 4 * flow.boreIn() * flow.boreIn() / 144;
    }

    private Optional<Pressure> staticLoss(int section) {
        double rise = 0;
        List<Leg> legs = piping.section(section).legs().findValue().orElse(List.of());
        for (Leg leg : legs) {
            if (leg.direction().isEmpty()) {
                return Optional.empty();
            }
            Direction way = leg.direction().get();
            double feet = leg.length().feet();
            rise += way == Direction.UP ? feet : way == Direction.DOWN ? -feet : 0;
        }
        return legs.isEmpty() ? Optional.empty() : Optional.of(Pressure.ofInWc(STATIC_IN_WC_PER_FT * rise));
    }

    /** One line an appliance, in the plan's order. */
    public List<OutletPressure> outlets() {
        return outlets;
    }

    /** One appliance, by its index in the plan. */
    public OutletPressure outlet(int appliance) {
        return outlets.get(appliance);
    }

    /** The regulator schedule: one line a regulator, in the plan's order. */
    public List<RegulatorPressure> regulators() {
        return List.of(regulators);
    }

    /** One regulator, by its index in the plan. */
    public RegulatorPressure regulator(int index) {
        return regulators[index];
    }

    /** The settings one regulator may have, by its index in the plan. */
    public SettingWindow window(int regulator) {
        return SettingWindow.of(this, regulator);
    }

    SectionFlow flow(int section) {
        return chain.flow[section];
    }

    private static Optional<Pressure> known(double value) {
        return AloneChain.known(value);
    }
}
