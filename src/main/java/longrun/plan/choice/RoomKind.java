package longrun.plan.choice;

/** What a room is used for, as far as the code asks. */
public enum RoomKind implements Named {
    GARAGE,
    BEDROOM,
    BATH,
    OTHER
}
