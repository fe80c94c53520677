package longrun.http;

import java.time.Duration;
import longrun.plan.json.PlanLimits;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;
import org.springframework.util.unit.DataSize;

/**
 * What the service takes and gives at most, {@code longrun.limits.*}.
 *
 * @param sections sections of a plan
 * @param appliances appliances of a plan
 * @param others entries of any other list
 * @param errors errors told in one answer
 * @param answer size of an answer
 * @param time from asking to the answer, waiting included
 * @param waiting requests of the service at once; each may hold a whole plan
 * @param sessions visitors that never came back
 */
@ConfigurationProperties("longrun.limits")
record ServiceLimits(
        @DefaultValue("2000") int sections,
        @DefaultValue("500") int appliances,
        @DefaultValue("200") int others,
        @DefaultValue("1000") int errors,
        @DefaultValue("16MB") DataSize answer,
        @DefaultValue("10s") Duration time,
        @DefaultValue("64") int waiting,
        @DefaultValue("200") int sessions) {

    PlanLimits plan() {
        return new PlanLimits(sections, appliances, others, errors);
    }
}
