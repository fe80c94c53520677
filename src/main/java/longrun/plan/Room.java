package longrun.plan;

import java.util.List;
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

    /** An opening for air. */
    public record Opening(Fact<String> to, Fact<Area> area) {}
}
