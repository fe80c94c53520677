package longrun.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.RecordComponent;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Whatever a person is asked for is there for a reason: a rule or a figure reads it. Walks the plan's records and looks
 * in the program for who reads each entry; screens, drawings, sheets and what reads and writes a plan do not count.
 */
class EntriesReadTest {

    /** Rooms that work something out: rules, figures, what is found, hold points and the test. */
    private static final List<String> ROOMS = Stream.of(
                    "rules",
                    "review",
                    "holdpoint",
                    "parts",
                    "fuel",
                    "tank",
                    "hotwater",
                    "pressuretest",
                    "pressure",
                    "sizing",
                    "capacity",
                    "piping")
            .map(room -> "longrun." + room)
            .toList();

    /** Entries that no rule and no figure reads, and why they are asked all the same. */
    private static final Map<String, String> ONLY_FOR_THE_READER = Map.of(
            "Plan.format", "says which plan this is; a reader refuses another",
            "Plan.name", "what the house is called on screen and paper",
            "Regulator.name", "what the regulator is called on screen and paper",
            "Section.name", "what the section is called on screen and paper",
            "Code.adopted", "names the local code on every sheet, for the inspector",
            "Leg.text", "the leg as it was typed, kept beside what it means",
            "Plan.Reading.date", "when a gauge was read: a record, printed as it stands",
            "Plan.Reading.minutes", "how long a test or a check held: a record, printed beside what is asked for");

    private static final JavaClasses PROGRAM = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("longrun");

    @Test
    void everyEntryIsReadByARuleOrAFigure() {
        Set<String> idle = new TreeSet<>();
        for (Class<?> record : records()) {
            for (RecordComponent entry : record.getRecordComponents()) {
                JavaClass owner = PROGRAM.get(record);
                JavaMethod accessor = owner.getMethod(entry.getName());
                if (!isRead(owner, accessor, new LinkedHashSet<>())) {
                    idle.add(name(record) + "." + entry.getName());
                }
            }
        }
        assertThat(idle)
                .as("asked of a person, and neither a rule nor a figure reads it")
                .isSubsetOf(ONLY_FOR_THE_READER.keySet());
    }

    /** A record's own method that reads the entry counts where that method is read in turn. */
    private static boolean isRead(JavaClass owner, JavaMethod method, Set<JavaMethod> seen) {
        if (!seen.add(method)) {
            return false;
        }
        return Stream.concat(
                        method.getAccessesToSelf().stream().map(JavaAccess::getOrigin),
                        method.getCallsOfSelf().stream().map(JavaAccess::getOrigin))
                .filter(by -> !copies(by, owner))
                .anyMatch(by -> works(by)
                        || by.getOwner().getPackageName().startsWith("longrun.plan")
                                && by instanceof JavaMethod own
                                && !by.getOwner().getPackageName().startsWith("longrun.plan.json")
                                && isRead(owner, own, seen));
    }

    private static boolean works(JavaCodeUnit by) {
        String room = by.getOwner().getPackageName();
        return ROOMS.stream().anyMatch(r -> room.equals(r) || room.startsWith(r + "."));
    }

    /** A copy with one entry changed carries all the others along without looking at them. */
    private static boolean copies(JavaCodeUnit by, JavaClass owner) {
        return by.getConstructorCallsFromSelf().stream()
                .anyMatch(c -> c.getTargetOwner().equals(owner));
    }

    private static String name(Class<?> record) {
        return record.getName().substring("longrun.plan.".length()).replace('$', '.');
    }

    /** The plan's records, each once, from the whole down to the parts. */
    private static List<Class<?>> records() {
        List<Class<?>> out = new ArrayList<>();
        Deque<Class<?>> open = new ArrayDeque<>(List.of(Plan.class));
        while (!open.isEmpty()) {
            Class<?> record = open.removeFirst();
            if (out.contains(record)) {
                continue;
            }
            out.add(record);
            for (RecordComponent entry : record.getRecordComponents()) {
                inside(entry.getGenericType())
                        .filter(c -> c.isRecord() && c.getPackageName().equals("longrun.plan"))
                        .filter(c -> c != Fact.class)
                        .forEach(open::add);
            }
        }
        assertThat(out).contains(Section.Pass.class, Room.Opening.class, Use.Valve.class);
        return out;
    }

    private static Stream<Class<?>> inside(java.lang.reflect.Type type) {
        if (type instanceof java.lang.reflect.ParameterizedType outer) {
            return Stream.of(outer.getActualTypeArguments()).flatMap(EntriesReadTest::inside);
        }
        return type instanceof Class<?> c ? Stream.of(c) : Stream.empty();
    }
}
