package longrun.http;

import longrun.review.Reviewer;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Makes the domain's plain classes known to the service and the screens. */
@Configuration
@EnableConfigurationProperties(ServiceLimits.class)
class ServiceConfiguration {

    @Bean
    Reviewer reviewer() {
        return Reviewer.standard();
    }
}
