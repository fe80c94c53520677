package longrun.plan;

import java.util.List;
import longrun.plan.choice.Louvre;
import longrun.plan.choice.RoomKind;
import longrun.quantity.AirChange;
import longrun.quantity.Area;
import longrun.quantity.Volume;

/** A room that holds appliances. */
public record Room(
        String id,
        Fact<String> name,
        Fact<Volume> volume,
        Fact<AirChange> infiltration,
        Fact<RoomKind> kind,
        Fact<Boolean> belowGrade,
        Fact<List<Opening>> openings) {

    /**
     * An opening for air.
     *
     * @param to outdoors, horizontal-duct (outdoors by one), another room's id, or indoors
     * @param area its free area; where a louvre is entered, the area over all
     * @param louvre what covers it, where the free area is not known
     */
    public record Opening(Fact<String> to, Fact<Area> area, Fact<Louvre> louvre) {}
}
