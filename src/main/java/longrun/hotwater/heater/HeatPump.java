package longrun.hotwater.heater;

/**
 * How output and COP of a heat pump fall in a colder room and with hotter water. The share of the ideal (Carnot) COP and the
 * current drawn are held constant, so both fall alike. Rated at the air and the water of the standard 24 h test, 67.5 and 125
 * degF, with 10 degF across each coil (own reading; memory). Never above what is rated.
 */
final class HeatPump {

    private static final double RATED_ROOM_F = 67.5;
    private static final double RATED_WATER_F = 125;
    private static final double COIL_F = 10;
    private static final double RANKINE = 459.67;
    private static final double RATED = ideal(RATED_ROOM_F, RATED_WATER_F);

    private HeatPump() {}

    /**
     * Share of the rated output and COP that is left, above 0 and at most 1.
     *
     * @param roomF air it takes its heat from
     * @param waterF water it heats
     */
    static double share(double roomF, double waterF) {
        double lift = waterF - roomF + 2 * COIL_F;
        return lift <= COIL_F ? 1 : Math.min(1, ideal(roomF, waterF) / RATED);
    }

    private static double ideal(double roomF, double waterF) {
        return (waterF + COIL_F + RANKINE) / (waterF - roomF + 2 * COIL_F);
    }
}
