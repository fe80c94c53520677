package longrun.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.piping.Piping;
import longrun.plan.Section;
import longrun.plan.SizeNames;
import longrun.plan.choice.Jacket;
import longrun.plan.choice.Material;
import longrun.sizing.SectionSize;
import longrun.sizing.SectionStatus;
import longrun.sizing.Sizing;

/** Which pipe is bought for each section: none where it is in place and large enough. */
final class Bought {

    private final Piping piping;
    private final Sizing sizing;

    Bought(Sizing sizing) {
        this.sizing = sizing;
        this.piping = sizing.piping();
    }

    Piping piping() {
        return piping;
    }

    /** Whether the pipe of a section is there already and carries what it must. */
    boolean isInPlace(int section) {
        return piping.section(section).installedSize().isKnown()
                && sizing.section(section).status() != SectionStatus.UNDERSIZED;
    }

    Optional<Material> material(int section) {
        return piping.section(section).material().findValue();
    }

    /** The size to buy as its table writes it: never one that carries too little; empty while there is none. */
    Optional<String> size(int section) {
        SectionSize size = sizing.section(section);
        return size.status() == SectionStatus.UNDERSIZED ? size.neededSize() : size.size();
    }

    /** The size as a person reads it, or that there is none yet. */
    String shown(int section) {
        return material(section)
                .flatMap(m -> size(section).map(s -> SizeNames.shown(m, s)))
                .orElse("not yet sized");
    }

    /** What it is called at the counter: the material with what the plan says of its kind. */
    String named(int section) {
        Section s = piping.section(section);
        Optional<Material> material = material(section);
        if (material.isEmpty()) {
            return "Pipe, material not entered";
        }
        String kind = switch (material.get()) {
            case STEEL -> "Steel pipe, Schedule 40" + (s.coated().is(true) ? ", factory coated" : "");
            case COPPER ->
                "Copper tube"
                        + s.tube().findValue().map(t -> ", type " + t.written()).orElse("");
            case CSST ->
                "CSST"
                        + (s.jacket().is(Jacket.ARC_RESISTANT) ? ", arc-resistant jacket" : "")
                        + s.table().findText().map(t -> ", sized by " + t).orElse("");
            case PE_PIPE -> "Polyethylene pipe for gas";
            case PE_TUBING -> "Polyethylene tubing for gas";
        };
        return kind;
    }

    /** Pipe of one kind and size goes together. */
    String key(int section) {
        return named(section) + "|" + shown(section);
    }

    /** What a buyer must be told of a section's size. */
    List<String> doubts(int section) {
        List<String> out = new ArrayList<>();
        String id = piping.section(section).id();
        if (sizing.section(section).status() == SectionStatus.UNDERSIZED) {
            out.add(id + ": " + sizing.section(section).size().orElse("the size entered")
                    + (piping.section(section).installedSize().isKnown() ? " in place" : " chosen")
                    + " carries too little, so the size needed stands here");
        }
        if (sizing.isProvisional(section) && size(section).isPresent()) {
            out.add(id + ": size so far, an entry still missing can make it larger");
        }
        return out;
    }

    /** Every section that pipe is bought for, in the plan's order. */
    List<Integer> sections() {
        List<Integer> out = new ArrayList<>();
        for (int i = 0; i < piping.sectionCount(); i++) {
            if (!isInPlace(i)) {
                out.add(i);
            }
        }
        return out;
    }

    /** Ids of the sections whose pipe is in place. */
    List<String> inPlace() {
        List<String> out = new ArrayList<>();
        for (int i = 0; i < piping.sectionCount(); i++) {
            if (isInPlace(i)) {
                out.add(piping.section(i).id());
            }
        }
        return out;
    }

    String id(int section) {
        return piping.section(section).id();
    }
}
