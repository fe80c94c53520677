package longrun.http;

import java.time.Duration;
import longrun.plan.json.PlanLimits;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;
import org.springframework.util.unit.DataSize;

/**
 * The limits of the service, set by {@code longrun.limits.*}.
 *
 * @param sections most sections of a plan
 * @param appliances most appliances of a plan
 * @param others most entries of any other list of a plan
 * @param errors most errors listed in one answer
 * @param answer largest size of an answer
 * @param time longest time from the request to its answer, waiting included
 * @param waiting most requests held at once; each may hold a whole plan
 * @param sessions most browser sessions that were used only once
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
