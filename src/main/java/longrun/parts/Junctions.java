package longrun.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import longrun.piping.Piping;
import longrun.piping.Stage;
import longrun.plan.choice.Material;

/** Where pipes meet: tees where sections part, reducers where the size changes, transitions where the material does. */
final class Junctions {

    private final Bought bought;
    private final Piping piping;
    private final Tally tally;

    private Junctions(Bought bought, Tally tally) {
        this.bought = bought;
        this.piping = bought.piping();
        this.tally = tally;
    }

    static void count(Bought bought, Tally tally) {
        Junctions all = new Junctions(bought, tally);
        for (Stage stage : bought.piping().stages()) {
            List<Integer> leaving = stage.sections().stream()
                    .filter(s -> bought.piping().parent(s) < 0)
                    .toList();
            all.tees(leaving, stage.id(), "the outlet of " + stage.id(), List.of());
        }
        for (int s = 0; s < bought.piping().sectionCount(); s++) {
            all.after(s);
        }
    }

    private void after(int s) {
        List<Integer> leaving = piping.children(s);
        tees(leaving, bought.id(s), bought.shown(s), List.of(s));
        for (int next : leaving) {
            change(s, next, leaving.size() == 1);
        }
    }

    /** As many tees as branches: of each point where several leave, all but one take a branch. */
    private void tees(List<Integer> leaving, String from, String inlet, List<Integer> before) {
        List<Integer> meeting = new ArrayList<>(before);
        meeting.addAll(leaving);
        if (leaving.size() < 2 || meeting.stream().allMatch(bought::isInPlace)) {
            return;
        }
        List<String> materials = meeting.stream()
                .map(m -> bought.material(m).map(Material::label).orElse("material not entered"))
                .distinct()
                .toList();
        boolean tubing = meeting.stream()
                .anyMatch(
                        m -> bought.material(m).filter(x -> x == Material.CSST).isPresent());
        List<String> where = meeting.stream().map(bought::id).toList();
        String outlets = leaving.stream().map(bought::shown).collect(Collectors.joining(" and "));
        tally.add(
                (tubing ? "Tee, or one manifold, " : "Tee, ") + String.join(" and ", materials),
                inlet + " to " + outlets,
                leaving.size() - 1,
                from,
                where,
                "parts into " + leaving.stream().map(bought::id).collect(Collectors.joining(" and ")));
    }

    private void change(int s, int next, boolean alone) {
        Optional<Material> here = bought.material(s);
        Optional<Material> there = bought.material(next);
        if (here.isEmpty() || there.isEmpty() || bought.isInPlace(s) && bought.isInPlace(next)) {
            return;
        }
        String at = bought.id(s) + " to " + bought.id(next);
        String sizes = bought.shown(s) + " to " + bought.shown(next);
        List<String> where = List.of(bought.id(s), bought.id(next));
        if (here.get() != there.get()) {
            if (!endsInRiser(s) && !endsInRiser(next)) {
                tally.add(
                        "Transition, " + here.get().label() + " to "
                                + there.get().label(),
                        sizes,
                        1,
                        at,
                        where,
                        "the material changes");
            }
        } else if (alone
                && bought.size(s).isPresent()
                && bought.size(next).isPresent()
                && !bought.size(s).equals(bought.size(next))) {
            tally.add("Reducing coupling, " + here.get().label(), sizes, 1, at, where, "the size changes");
        }
    }

    /** A riser is itself the change from plastic to metal. */
    private boolean endsInRiser(int s) {
        return piping.section(s).ends().findValue().orElse(List.of()).stream().anyMatch(e -> e.contains("riser"));
    }
}
