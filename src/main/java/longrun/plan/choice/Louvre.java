package longrun.plan.choice;

/** What an opening for air is covered with, where its area is given over all and not as the free area. */
public enum Louvre implements Named {
    METAL,
    WOOD
}
