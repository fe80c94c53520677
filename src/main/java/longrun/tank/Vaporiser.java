package longrun.tank;

/** How much vapour one container can give without growing colder than its least pressure allows. */
sealed interface Vaporiser {

    /** Soil's conductivity, Btu/(h.ft.degF), held from memory. */
    double SOIL = 0.6;

    /**
     * Vapour, Btu/h; NaN where nothing is known.
     *
     * @param fill share of the water capacity (of the propane weight, for a cylinder)
     * @param airF air
     * @param liquidF temperature of the liquid at the least tank pressure
     */
    double btuh(double fill, double airF, double liquidF);

    /** Whether the figure is derived, not a rule of the trade. */
    default boolean derived() {
        return false;
    }

    /** What the liquid's heat comes from: the air, or the ground. */
    default double sourceF(double airF) {
        return airF;
    }

    /** A tank lying above ground: the rule as it stands. */
    record Lying(double diameterIn, double lengthIn) implements Vaporiser {
        @Override
        public double btuh(double fill, double airF, double liquidF) {
            return VapourRule.atLiquid(
                    VapourRule.btuh(diameterIn, lengthIn, VapourRule.wettedShare(fill), airF), airF, liquidF);
        }
    }

    /**
     * A tank standing above ground: the same heat through each square foot, on the shell up to the liquid, taken as the same
     * share of its height as of its volume.
     */
    record Standing(double diameterIn, double heightIn) implements Vaporiser {
        @Override
        public double btuh(double fill, double airF, double liquidF) {
            return VapourRule.atLiquid(
                    VapourRule.btuh(diameterIn, heightIn, Math.max(0, Math.min(1, fill)), airF), airF, liquidF);
        }

        @Override
        public boolean derived() {
            return true;
        }
    }

    /**
     * A buried tank: heat conducted through the soil to a round body, S k (ground - liquid) x wetted share, S = 2 pi L /
     * arcosh(2 z / D); never above the rule at 0 degF.
     *
     * @param axisFt depth of the axis, more than half the diameter
     */
    record Buried(double diameterIn, double lengthIn, double axisFt, double groundF) implements Vaporiser {
        @Override
        public double btuh(double fill, double airF, double liquidF) {
            double heat = wall(fill) * Math.max(0, groundF - liquidF);
            double rule = VapourRule.btuh(diameterIn, lengthIn, VapourRule.wettedShare(fill), 0);
            return Math.min(rule, heat * Propane.BTU_PER_LB / Propane.latent(liquidF));
        }

        /** Heat through the soil to the wetted shell, Btu/h for each degF. */
        private double wall(double fill) {
            double ratio = 2 * axisFt / (diameterIn / 12);
            double arcosh = Math.log(ratio + Math.sqrt(ratio * ratio - 1));
            return 2 * Math.PI * (lengthIn / 12) / arcosh * SOIL * VapourRule.wettedShare(fill);
        }

        @Override
        public double sourceF(double airF) {
            return groundF;
        }

        @Override
        public boolean derived() {
            return true;
        }
    }

    /** A 100 lb cylinder: its table, which names no least pressure. */
    record Cylinder() implements Vaporiser {
        @Override
        public double btuh(double fill, double airF, double liquidF) {
            return CylinderTable.btuh(fill * CylinderTable.FULL_LB, airF).orElse(Double.NaN);
        }
    }
}
