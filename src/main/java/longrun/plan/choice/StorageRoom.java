package longrun.plan.choice;

/** Where the storage heater takes its heat from. */
public enum StorageRoom implements Named {
    HEATED,
    UNHEATED,
    DUCTED
}
