package longrun.http;

import longrun.review.Reviewer;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Provides the reviewer to the service and the screens, and the limits to the service. */
@Configuration
@EnableConfigurationProperties(ServiceLimits.class)
class ServiceConfiguration {

    @Bean
    Reviewer reviewer() {
        return Reviewer.standard();
    }
}
