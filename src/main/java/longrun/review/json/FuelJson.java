package longrun.review.json;

import java.time.LocalDate;
import longrun.fuel.FuelReport;
import longrun.origin.Months;

/** Writes the year's gas of a review. */
final class FuelJson {

    private FuelJson() {}

    static void write(FuelReport fuel, ReviewObject out) {
        months(out, "degreeDays65", fuel.degreeDays65());
        TankJson.figure(out, "annualGal", fuel.annualGal());
        ReviewObject uses = out.child("byUse");
        fuel.byUse().forEach((use, gallons) -> TankJson.figure(uses, use, gallons));
        months(out, "monthlyGal", fuel.monthlyGal());
        ReviewObject days = out.child("daysPerFill");
        TankJson.figure(days, "coldestMonth", fuel.daysPerFill().coldestMonth());
        TankJson.figure(days, "warmestMonth", fuel.daysPerFill().warmestMonth());
        TankJson.figure(days, "mean", fuel.daysPerFill().mean());
        TankJson.figure(out, "deliveriesPerYear", fuel.deliveriesPerYear());
        out.text("nextRefill", fuel.nextRefill().map(LocalDate::toString));
        out.text("callBy", fuel.callBy().map(LocalDate::toString));
        ReviewObject arrangements = out.child("arrangements");
        fuel.arrangements().forEach((a, gallons) -> TankJson.figure(arrangements, a.written(), gallons));
        TankJson.figure(out, "costPerYear", fuel.cost());
        TankJson.figure(out, "co2Lb", fuel.co2Lb());
    }

    static void months(ReviewObject out, String field, Months months) {
        if (!months.values().isEmpty()) {
            out.numbers(
                    field,
                    months.values().stream().mapToDouble(Double::doubleValue).toArray(),
                    months::origin);
        }
    }
}
