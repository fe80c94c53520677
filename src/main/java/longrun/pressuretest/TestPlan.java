package longrun.pressuretest;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import longrun.capacity.FittingLengths;
import longrun.piping.Outlet;
import longrun.piping.Piping;
import longrun.piping.Side;
import longrun.piping.Stage;
import longrun.plan.Appliance;
import longrun.plan.Code;
import longrun.plan.Section;
import longrun.plan.choice.CodeProfile;
import longrun.plan.choice.Material;
import longrun.pressure.Pressures;
import longrun.quantity.Bore;
import longrun.quantity.Length;
import longrun.quantity.Pressure;
import longrun.quantity.Show;
import longrun.sizing.SectionSize;

/** Makes the test of each side of a house's pipe, ahead of the point of delivery and behind it. */
public final class TestPlan {

    private final Pressures pressures;
    private final Piping piping;

    private TestPlan(Pressures pressures) {
        this.pressures = pressures;
        this.piping = pressures.sizing().piping();
    }

    /** The sides there are, the tank side first; a side without pipe has no test. */
    public static List<SideTest> of(Pressures pressures) {
        return new TestPlan(pressures).sides();
    }

    private List<SideTest> sides() {
        Map<Side, List<Stage>> stages = new EnumMap<>(Side.class);
        for (Stage s : piping.stages()) {
            if (!s.sections().isEmpty()) {
                stages.computeIfAbsent(s.side(), k -> new ArrayList<>()).add(s);
            }
        }
        List<SideTest> out = new ArrayList<>();
        stages.forEach((side, own) -> out.add(test(side, own)));
        return List.copyOf(out);
    }

    private SideTest test(Side side, List<Stage> stages) {
        List<Integer> sections =
                stages.stream().flatMap(s -> s.sections().stream()).toList();
        List<String> unknown = new ArrayList<>();
        double cuFt = 0;
        for (int s : sections) {
            OptionalDouble volume = volumeCuFt(s);
            if (volume.isEmpty()) {
                unknown.add(piping.section(s).id());
            }
            cuFt += volume.orElse(0);
        }
        Optional<Stage> highest = highest(stages);
        Optional<Pressure> working =
                highest.flatMap(s -> pressures.regulator(s.regulatorIndex()).lockUp());
        boolean plastic = side != Side.HOUSE_SIDE && sections.stream().anyMatch(s -> isPlastic(piping.section(s)));
        Optional<Least> least = working.map(w -> least(w, plastic));
        boolean plumbing = isPlumbing();
        TestFact minutes = TestFact.get(plumbing ? "plumbing-minutes" : "least-minutes");
        return new SideTest(
                side,
                sections.stream().map(s -> piping.section(s).id()).toList(),
                unknown.isEmpty() ? Optional.of(cuFt) : Optional.empty(),
                unknown,
                working,
                highest.map(Stage::id),
                least.map(Least::pressure),
                least.map(Least::from).orElseGet(() -> notKnown(stages)),
                (int) minutes.value(),
                minutes.source(),
                least.map(l -> Pressure.ofPsi(
                        l.pressure().psi() * TestFact.get("gauge-times").value())),
                isolate(stages, least.map(Least::pressure)),
                stages.stream()
                        .flatMap(s -> TestReading.find(piping.plan(), s.id()).stream())
                        .toList());
    }

    /** The stage that stands highest at no flow; empty where one of them is not known, since it could be higher. */
    private Optional<Stage> highest(List<Stage> stages) {
        Optional<Stage> best = Optional.empty();
        double most = -1;
        for (Stage s : stages) {
            Optional<Pressure> lockUp = pressures.regulator(s.regulatorIndex()).lockUp();
            if (lockUp.isEmpty()) {
                return Optional.empty();
            }
            if (lockUp.get().inWc() > most) {
                most = lockUp.get().inWc();
                best = Optional.of(s);
            }
        }
        return best;
    }

    private record Least(Pressure pressure, String from) {}

    /** The greatest of what the codes ask for: of two readings the higher test is the safer. */
    private Least least(Pressure working, boolean plastic) {
        TestFact times = TestFact.get("times-working-pressure");
        double byWorking = times.value() * working.psi();
        Least most = new Least(
                Pressure.ofPsi(byWorking),
                Show.plain(times.value()) + " times the " + Show.decimals(working.psi(), 1)
                        + " psi it stands at with nothing firing; " + times.source());
        List<TestFact> floors = new ArrayList<>(List.of(TestFact.get("least-pressure")));
        if (plastic) {
            floors.add(TestFact.get("plastic-pressure"));
        }
        if (isPlumbing()) {
            floors.add(TestFact.get("plumbing-pressure"));
        }
        for (TestFact f : floors) {
            if (f.value() > most.pressure().psi()) {
                most = new Least(Pressure.ofPsi(f.value()), "the least there is; " + f.source());
            }
        }
        return most;
    }

    private String notKnown(List<Stage> stages) {
        String open = stages.stream()
                .filter(s -> pressures.regulator(s.regulatorIndex()).lockUp().isEmpty())
                .map(Stage::id)
                .findFirst()
                .orElse("a regulator");
        return "not known: the outlet pressure of " + open + " is not entered; never under "
                + Show.plain(TestFact.get("least-pressure").value()) + " psi";
    }

    private boolean isPlumbing() {
        return piping.plan()
                .code()
                .map(Code::profile)
                .filter(p -> p.is(c -> c == CodeProfile.PLUMBING_CODE))
                .isPresent();
    }

    private static boolean isPlastic(Section s) {
        return s.material().is(m -> m == Material.PE_PIPE || m == Material.PE_TUBING);
    }

    /** What a section holds, cu ft; empty where its bore or its length is not known. */
    private OptionalDouble volumeCuFt(int section) {
        SectionSize size = pressures.sizing().section(section);
        Optional<Length> length = piping.measured(section);
        Optional<Bore> bore = bore(size);
        return length.isEmpty() || bore.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.PI
                        / 4
                        * Math.pow(bore.get().inches() / 12, 2)
                        * length.get().feet());
    }

    private static Optional<Bore> bore(SectionSize size) {
        if (size.bore().isPresent() || size.size().isEmpty() || size.table().isEmpty()) {
            return size.bore();
        }
        Material material = size.table().get().material();
        return material == Material.CSST
                ? Optional.empty()
                : FittingLengths.bore(material, size.size().get());
    }

    private List<String> isolate(List<Stage> stages, Optional<Pressure> test) {
        List<String> out = new ArrayList<>();
        if (stages.stream().anyMatch(s -> s.regulator().fedBy().is(f -> f.equals("tank")))) {
            out.add("The tank valve stays closed and its outlet is blanked.");
        }
        for (Stage s : stages) {
            out.add("Regulator " + s.id() + ", ahead of the pipe, is taken off or blanked.");
            for (Outlet o : s.outlets()) {
                outlet(o, test).ifPresent(out::add);
            }
        }
        return out;
    }

    private Optional<String> outlet(Outlet o, Optional<Pressure> test) {
        return switch (o.kind()) {
            case APPLIANCE -> Optional.of(appliance(piping.plan().appliances().get(o.item()), test));
            case REGULATOR -> Optional.of("Regulator " + o.id() + ", at the pipe's end, is taken off or blanked.");
            case CAPPED -> Optional.of("Section " + o.id() + " ends at its cap.");
            case OPEN -> Optional.of("Section " + o.id() + " ends at nothing that is entered: cap it first.");
        };
    }

    /** An appliance that takes the test pressure may stay behind its closed valve; any other comes off. */
    private String appliance(Appliance a, Optional<Pressure> test) {
        Optional<Pressure> most = a.maxInlet().findValue();
        String called = capital(piping.names().called(a));
        boolean takes = most.isPresent()
                && test.isPresent()
                && test.get().psi() <= most.get().psi();
        if (takes) {
            return called + " takes the test pressure by its label: close its valve.";
        }
        return called + " is disconnected and its outlet capped"
                + (most.isEmpty()
                        ? "; the greatest pressure it takes is not entered."
                        : ": the test is more than it takes.");
    }

    private static String capital(String called) {
        return called.substring(0, 1).toUpperCase(Locale.ROOT) + called.substring(1);
    }
}
